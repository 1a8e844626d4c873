using System.Globalization;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>What the electrician reads: points, loads, and light and air by room.</summary>
internal static class PowerTables
{
    public static KeyTable Points(Plan plan, IReadOnlyList<ServicePoint> points) => new(
        "Points, from the steel datum",
        ["Mark", "What", "X", "Y", "Height", "Circuit", "Rating"],
        [.. points.Select(p => (IReadOnlyList<Cell>)
        [
            ServiceLayer.Mark(p),
            ServiceSymbols.NameOf(p),
            QuantityText.Cell((p.At - plan.Shell.Datum).X, plan.Units),
            QuantityText.Cell((p.At - plan.Shell.Datum).Y, plan.Units),
            p.Height is { } height ? QuantityText.Cell(height, plan.Units) : "",
            (p as CircuitPoint)?.Circuit ?? "",
            string.Join(' ', ((p as RatedPoint)?.Ratings.Select(r => QuantityText.Of(r, plan.Units)) ?? []).Concat(p.Terms)),
        ])]);

    public static KeyTable Loads(Plan plan)
    {
        var needs = PowerNeeds.Of(plan).ToList();
        double watts = needs.Where(n => n.Need.Amount is { Unit.Kind: QuantityKind.Power }).Sum(n => n.Need.Amount!.Value.Base);
        return new KeyTable(
            "Connected loads, as written in the plan",
            ["No", "Item", "Room", "Circuit", "Load"],
            [
                .. needs.Select(n => (IReadOnlyList<Cell>)
                    [FormattableString.Invariant($"{n.Station.Item}"), n.Station.Caption, n.Station.Room.Label, n.Station.Circuit, PowerNeeds.Text(n.Need, plan.Units)]),
                ["", "all together", "", "", QuantityText.Of(watts, Measure.Power, plan.Units)],
            ]);
    }

    /// <summary>What hangs on each circuit, in the order of their numbers; null for a plan that names none.</summary>
    public static KeyTable? Circuits(Plan plan)
    {
        var uses = plan.Services.OfType<CircuitPoint>().Where(s => s.Circuit.Length > 0).Select(s => (s.Circuit, Use: s.Id, Watts: 0.0, Rating: string.Join(' ', s.Ratings.Select(r => QuantityText.Of(r, plan.Units)))))
            .Concat(PowerNeeds.Of(plan).Where(n => n.Station.Circuit.Length > 0).Select(n => (
                n.Station.Circuit,
                Use: FormattableString.Invariant($"{n.Station.Item} {n.Station.Caption}"),
                Watts: n.Need.Amount is { Unit.Kind: QuantityKind.Power } power ? power.Base : 0,
                Rating: "")));
        var rows = uses.GroupBy(u => u.Circuit).OrderBy(g => int.TryParse(g.Key, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : int.MaxValue).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (IReadOnlyList<Cell>)
            [
                g.Key,
                string.Join(", ", g.Select(u => u.Use)),
                string.Join(", ", g.Select(u => u.Rating).Where(r => r.Length > 0).Distinct()),
                g.Sum(u => u.Watts) is var watts && watts > 0 ? QuantityText.Of(watts, Measure.Power, plan.Units) : "",
            ])
            .ToList();
        return rows.Count == 0 ? null : new KeyTable("Circuits, as written in the plan", ["Circuit", "Serves", "Rating", "Machines"], rows);
    }

    public static KeyTable Rooms(PlanFacts facts) => new(
        "Light and air by room",
        ["Room", "Light", "Air in", "Air out", "Volume"],
        [.. facts.Plan.Rooms.Select(r => (IReadOnlyList<Cell>)
        [
            r.Label,
            facts.Light.GetValueOrDefault(r.Id) is { } lit ? lit.Level : "not said",
            RoomServices.Air<AirSupply>(facts.Plan, r),
            RoomServices.Air<AirExhaust>(facts.Plan, r),
            facts.RoomSizes[r.Id].Volume,
        ])]);
}
