using System.Globalization;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Sizing.Lifting;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>What hands lift, from where to where, and the index of each lift; null for a plan in which nothing is carried by hand.</summary>
internal static class LiftTable
{
    /// <summary>A lift from one station to another stands once, however many flows ask for it.</summary>
    public static KeyTable? Of(Plan plan)
    {
        var rows = HandLifts.Of(plan).Select(l => Row(plan, l)).DistinctBy(r => string.Join('\n', r)).ToList();
        return rows.Count == 0 ? null : new KeyTable("Lifts by hand", ["From", "To", "Load", "Lifting index"], rows);
    }

    private static IReadOnlyList<Cell> Row(Plan plan, HandLift lift) =>
    [
        Place(lift.From),
        Place(lift.To),
        lift.LoadKilograms is { } load ? MassText.InHand(load, plan.Units) : "",
        Index(lift),
    ];

    /// <summary>Items by number and name, hatches by their name in the plan.</summary>
    private static string Place(Stop? stop) => stop switch
    {
        StationStop s => FormattableString.Invariant($"{s.Station.Item} {s.Station.Caption}"),
        null => "outside",
        _ => stop.Name,
    };

    private static string Index(HandLift lift) => lift switch
    {
        { NotCovered: { } why } => $"not covered: {why}",
        { Index: double.PositiveInfinity } => "beyond the equation",
        { Index: { } index } => index.ToString("0.00", CultureInfo.InvariantCulture),
        _ => "load not said",
    };
}
