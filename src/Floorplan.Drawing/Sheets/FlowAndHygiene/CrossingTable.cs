using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model.Space;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Where streams meet: which legs, for how far, and whether at the same time of day.</summary>
internal static class CrossingTable
{
    public static KeyTable Of(IReadOnlyList<StreamCrossing> crossings, IReadOnlyList<FlowLeg> legs, UnitSystem units)
    {
        var marks = legs.ToDictionary<FlowLeg, LegRoute, string>(l => l.Route, l => l.Mark, ReferenceEqualityComparer.Instance);
        return new KeyTable(
            "Where streams meet",
            ["Mark", "Legs", "How", "When"],
            [.. crossings.SelectMany(c => c.Meetings.Select(m => Row(c, m, marks, units)))]);
    }

    private static IReadOnlyList<string> Row(StreamCrossing crossing, Meeting meeting, Dictionary<LegRoute, string> marks, UnitSystem units) =>
    [
        crossing.Mark,
        $"{marks.GetValueOrDefault(meeting.First, "?")} and {marks.GetValueOrDefault(meeting.Second, "?")}",
        meeting.SharedMm > 0 ? "together for " + LengthText.Distance(meeting.SharedMm, units) : "cross",
        meeting.First.Leg.Period == meeting.Second.Leg.Period ? "same time" : "other times",
    ];
}
