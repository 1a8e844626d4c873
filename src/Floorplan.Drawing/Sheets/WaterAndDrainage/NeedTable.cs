using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>What every wet station needs and which points serve it.</summary>
internal static class NeedTable
{
    public static KeyTable Of(Plan plan, IReadOnlyList<PipeRun> runs)
    {
        var served = runs.SelectMany(r => r.Uses.Select(u => (Key: (u.Id, r.Kind), Mark: ServiceLayer.Mark(r.Point)))).ToDictionary(p => p.Key, p => p.Mark);
        var wet = plan.Stations.Where(s => s.IsWet).ToList();
        bool gaps = wet.Exists(s => s.AirGap is not null);
        return new KeyTable(
            "Wet stations and what serves them",
            ["No", "Item", "Cold", "Hot", "Drain", .. gaps ? ["Air gap"] : Array.Empty<string>()],
            [.. wet.Select(s => (IReadOnlyList<Cell>)
            [
                FormattableString.Invariant($"{s.Item}"),
                s.Caption,
                Cell(s, PipeKind.Cold, served, plan.Units),
                Cell(s, PipeKind.Hot, served, plan.Units),
                Cell(s, PipeKind.Waste, served, plan.Units),
                .. gaps ? [s.AirGap is { } gap ? QuantityText.Cell(gap, plan.Units) : ""] : Array.Empty<string>(),
            ])]);
    }

    private static string Cell(Station station, PipeKind kind, Dictionary<(string, PipeKind), string> served, UnitSystem units)
    {
        string amount = NeedText.Of(station, kind, units);
        string point = served.GetValueOrDefault((station.Id, kind), "no point");
        return amount.Length == 0 ? "" : amount == "yes" ? point : $"{amount}, {point}";
    }
}
