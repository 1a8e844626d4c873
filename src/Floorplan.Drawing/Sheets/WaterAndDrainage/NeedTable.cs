using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Water;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>What every wet thing needs and which point serves it: stations, hoses and heaters, and all of them together.</summary>
internal static class NeedTable
{
    public static KeyTable Of(PlanFacts facts)
    {
        var wet = facts.Plan.Stations.Where(facts.Uses.IsWet).ToList();
        var points = facts.Plan.Services.Where(s => PipeLook.Piped.Any(k => facts.Supply.Of(s.Id, k) is { Use.Point: not null })).ToList();
        bool gaps = wet.Exists(s => s.AirGap is not null);
        string[] gap = gaps ? ["Air gap"] : [];
        return new KeyTable(
            "Uses, and what serves each",
            ["No", "Item", "Cold", "Hot", "Drain", .. gap],
            [
                .. wet.Select(
                    s => Row(FormattableString.Invariant($"{s.Item}"), s.Caption, s.Id, gaps
                        ? s.AirGap is { } air
                        ? Tape.For(facts.Plan.Units).Cell(air)
                        : ""
                        : null, facts)),
                .. points.Select(p => Row(ServiceLayer.Mark(p), ServiceSymbols.NameOf(p), p.Id, gaps ? "" : null, facts)),
                Together(facts, gaps),
            ]);
    }

    private static IReadOnlyList<Cell> Row(string number, string name, string id, string? gap, PlanFacts facts) =>
        [number, name, .. PipeLook.Piped.Select(kind => Of(id, kind, facts)), .. gap is null ? Array.Empty<Cell>() : [gap]];

    private static Cell Of(string id, NeedKind kind, PlanFacts facts)
    {
        var uses = facts.Uses.By(id).Where(u => u.Kind == kind).ToList();
        if (uses.Count == 0)
        {
            return "";
        }

        string amount = string.Join(" + ", uses.Select(u => UseText.Amount(u, facts.Plan.Units)).Where(t => t.Length > 0));
        string point = By(facts.Supply.Of(id, kind)!);
        return amount.Length == 0 ? point : $"{amount}, {point}";
    }

    /// <summary>The point, and its room where that is not the thing's own.</summary>
    private static string By(Served served) => served switch
    {
        { Choice: SupplyChoice.Main } => "main",
        { Point: null } => "no point",
        { Choice: SupplyChoice.OtherRoom, Point: { Room: { } room } point } => $"{ServiceLayer.Mark(point)} of {room.Label}",
        { Point: { } point } => ServiceLayer.Mark(point),
    };

    /// <summary>The same numbers as sheet 8 and its schedule of connections.</summary>
    private static IReadOnlyList<Cell> Together(PlanFacts facts, bool gaps)
    {
        var byKind = facts.Connections.ToDictionary(c => c.Kind);
        return ["", "all together", .. PipeLook.Piped.Select(k => byKind.TryGetValue(k, out var c) ? Sum(c) : ""), .. gaps
            ? [""]
            : Array.Empty<Cell>()];
    }

    private static Cell Sum(Connection c)
        => c.Together is { } sum ? new Cell($"{c.Uses.Text} uses, {sum.Text}", [c.Uses, sum]) : new Cell($"{c.Uses.Text} uses", [c.Uses]);
}
