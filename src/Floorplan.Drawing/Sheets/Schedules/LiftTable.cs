using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Model.Flows;
using Floorplan.Sizing;
using Floorplan.Sizing.Lifting;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>
/// What hands lift, from where to where, and the index of each lift; null for a plan in which nothing is carried by hand.
/// </summary>
internal static class LiftTable
{
    /// <summary>A lift from one station to another stands once, however many flows ask for it.</summary>
    public static KeyTable? Of(PlanFacts facts)
    {
        var rows = facts.Lifts.Select(Row).DistinctBy(r => string.Join('\n', r)).ToList();
        return rows.Count == 0 ? null : new KeyTable("Lifts by hand", ["From", "To", "Load", "Lifting index"], rows);
    }

    private static IReadOnlyList<Cell> Row(HandLift lift) =>
    [
        Place(lift.From),
        Place(lift.To),
        lift.Load is { } load ? load : "",
        Index(lift),
    ];

    /// <summary>Items by number and name, hatches by their name in the plan.</summary>
    private static string Place(Stop? stop) => stop switch
    {
        StationStop s => FormattableString.Invariant($"{s.Station.Item} {s.Station.Caption}"),
        null => "outside",
        _ => stop.Name,
    };

    private static Cell Index(HandLift lift) => lift switch
    {
        { NotCovered: { } why } => $"not covered: {why}",
        { Index: { } index } => index,
        _ => "load not said",
    };
}
