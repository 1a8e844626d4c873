using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Carrying;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Every leg: from, to, how, when, and how far it really is.</summary>
internal static class LegTable
{
    public static KeyTable Of(IReadOnlyList<FlowLeg> legs, PlanFacts facts) => new(
        "Streams, leg by leg",
        ["Mark", "From, to", "How", "Way"],
        [.. legs.GroupBy(l => l.Route.Flow, ReferenceEqualityComparer.Instance)
            .SelectMany(flow => flow.Select(l => Row(l, facts)).Prepend([FlowLeg.NameOf(flow.First().Route.Flow)]))]);

    private static IReadOnlyList<Cell> Row(FlowLeg leg, PlanFacts facts) =>
    [
        leg.Mark,
        $"{Name(leg.Route.Leg.From)} to {Name(leg.Route.Leg.To)}",
        string.Join(
            ", ", new[] {
                FlowLeg.How(leg.Route.Leg.Carriage, facts.Plan.Units), FlowLeg.When(leg.Route.Leg.Period) }.Where(t => t.Length > 0)),
        Way(leg.Route, facts.Ways),
    ];

    /// <summary>At the last leg of a carry by hand through doors also the whole of it.</summary>
    private static Cell Way(LegRoute leg, Ways ways) => !ways.ByLeg.TryGetValue(leg, out var way) ? "no way"
        : ways.EndingWith(leg) is { Legs.Count: > 1 } carry
            ? new Cell($"{way.Text}, {carry.Length.Text} in all", [way, carry.Length])
        : way;

    private static string Name(Stop stop) => stop switch
    {
        StationStop station => FormattableString.Invariant($"{station.Station.Item} {station.Station.Caption}"),
        RoomStop room => room.Room.Label,
        OpeningStop opening => OpeningLayer.Mark(opening.Opening),
        _ => stop.Name,
    };
}
