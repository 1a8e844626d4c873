using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing;
using Floorplan.Sizing.LightAndAir.Lamps;
using Floorplan.Sizing.Power.Circuits;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>What the electrician reads: points, loads, and light and air by room.</summary>
internal static class PowerTables
{
    public static KeyTable Points(Plan plan, IReadOnlyList<ServicePoint> points) => new(
        $"Points, from the {DatumWords.Of(plan.Shell.Kind)}",
        ["Mark", "What", "X", "Y", "Height", "Circuit", "Rating"],
        [.. points.Select(p => (IReadOnlyList<Cell>)
        [
            ServiceLayer.Mark(p),
            ServiceSymbols.NameOf(p),
            Tape.For(plan.Units).Cell((p.At - plan.Shell.Datum).X),
            Tape.For(plan.Units).Cell((p.At - plan.Shell.Datum).Y),
            p.Height is { } height ? Tape.For(plan.Units).Cell(height) : "",
            (p as CircuitPoint)?.Circuit ?? "",
            string.Join(' ', ((p as RatedPoint)?.Ratings.Select(r => QuantityText.Of(r, plan.Units)) ?? []).Concat(p.Terms)),
        ])]);

    public static KeyTable Loads(PlanFacts facts) => new(
        "Connected loads, as written in the plan",
        ["No", "Item", "Room", "Circuit", "Load"],
        [
            .. facts.Power.Uses.Select(
                u => (IReadOnlyList<Cell>)[Number(u), Name(u), (u.Station?.Room ?? u.Point?.Room)?.Label
                    ?? "", u.Circuit, UseText.AmountOrKind(u, facts.Plan.Units)]),
            ["", "all together", "", "", facts.Power.Together is { } sum ? sum : "not said"],
        ]);

    /// <summary>
    /// What hangs on each circuit, in the order of their numbers, then those that are proposed, each with what would guard and wire it;
    /// null for a plan without any.
    /// </summary>
    public static KeyTable? Circuits(PlanFacts facts)
    {
        var sized = facts.PowerDesign?.Circuits ?? [];
        var said = sized.Where(c => !c.IsProposed).ToDictionary(c => c.Name, StringComparer.Ordinal);
        List<IReadOnlyList<Cell>> rows =
        [
            .. facts.Power.Circuits.Select(c => Row(
                c.Circuit,
                string.Join(", ", c.Points.Select(p => p.Id).Concat(c.Machines.Select(u => $"{Number(u)} {Name(u)}"))),
                said.GetValueOrDefault(c.Circuit))),
            .. sized.Where(c => c.IsProposed).Select(c => Row(c.Mark, c.Serves, c)),
        ];
        return rows.Count == 0 ? null : new KeyTable(
            "Circuits, with breaker and copper",
            ["Circuit", "Serves", "Load", "Current", "Breaker", "Conductor", "Drop"], rows);
    }

    private static IReadOnlyList<Cell> Row(string mark, string serves, SizedCircuit? circuit) =>
    [
        mark, serves,
        circuit is null ? "" : circuit.Draws,
        circuit is null ? "" : circuit.Current,
        circuit?.Breaker is { } breaker ? breaker : "",
        circuit?.Conductor is { } wire ? wire : "",
        circuit?.Drop is { } drop ? drop : "",
    ];

    public static KeyTable Rooms(PlanFacts facts) => new(
        "Light and air by room",
        ["Room", "Light", "Lamps", "Air in", "Air out", "Volume", "Changes"],
        [.. facts.Air.Values.Select(a => (IReadOnlyList<Cell>)
        [
            a.Room.Label,
            facts.Light.GetValueOrDefault(a.Room.Id) is { } lit ? lit.Level : "not said",
            facts.Lamps.GetValueOrDefault(a.Room.Id) is { } lamps ? Lamps(lamps, facts.Plan.Units) : "",
            Flow(a.In, a.HasSupply),
            Flow(a.Out, a.HasExhaust),
            a.Volume,
            a.Changes is { } changes ? changes : "",
        ])]);

    /// <summary><c>4 of 4000 lm</c>; proposed ones say so.</summary>
    private static string Lamps(RoomLamps lamps, UnitSystem units)
        => $"{QuantityText.Plain(lamps.Count.Value, 0)} of {QuantityText.Of(lamps.Flux, Measure.LuminousFlux, units)}"
            + (lamps.IsSaid ? "" : ", proposed");

    /// <summary><c>yes</c> for a fan without a figure, empty without a fan.</summary>
    private static Cell Flow(Figure? flow, bool hasFan) => flow is not null ? flow : hasFan ? "yes" : "";

    private static string Number(ServiceUse use)
        => use.Station is { } station ? FormattableString.Invariant($"{station.Item}") : ServiceLayer.Mark(use.Point!);

    private static string Name(ServiceUse use) => use.Station?.Caption ?? ServiceSymbols.NameOf(use.Point!);
}
