using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Model.Space;
using Floorplan.Sizing.Carrying;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Where streams meet: which legs, for how far, and whether at the same time of day.</summary>
internal static class CrossingTable
{
    public static KeyTable Of(IReadOnlyList<StreamCrossing> crossings, IReadOnlyList<FlowLeg> legs, Ways ways)
    {
        var marks = legs.ToDictionary<FlowLeg, LegRoute, string>(l => l.Route, l => l.Mark, ReferenceEqualityComparer.Instance);
        return new KeyTable(
            "Where streams meet",
            ["Mark", "Legs", "Share at most", "When"],
            [.. crossings.SelectMany(c => c.Meetings.GroupBy(IsSameTime).OrderByDescending(g => g.Key)
                .Select(g => Row(c, [.. g], marks, ways)))]);
    }

    private static bool IsSameTime(Meeting meeting) => meeting.First.Leg.Period == meeting.Second.Leg.Period;

    private static IReadOnlyList<Cell> Row(
        StreamCrossing crossing, IReadOnlyList<Meeting> meetings, Dictionary<LegRoute, string> marks, Ways ways)
    {
        return
        [
            crossing.Mark,
            string.Join(", ", meetings.Select(m => $"{marks.GetValueOrDefault(m.First, "?")}-{marks.GetValueOrDefault(m.Second, "?")}")),
            ways.Shared[meetings.MaxBy(m => m.SharedMm)!],
            IsSameTime(meetings[0]) ? "same time" : "other times",
        ];
    }
}
