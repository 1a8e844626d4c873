using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Every leg: from, to, how, when, and how far it really is.</summary>
internal static class LegTable
{
    public static KeyTable Of(IReadOnlyList<FlowLeg> legs, UnitSystem units) => new(
        "Streams, leg by leg",
        ["Mark", "From, to", "How", "Way"],
        [.. legs.GroupBy(l => l.Route.Flow, ReferenceEqualityComparer.Instance).SelectMany(flow => flow.Select(l => Row(l, units)).Prepend([FlowLeg.NameOf(flow.First().Route.Flow)]))]);

    private static IReadOnlyList<Cell> Row(FlowLeg leg, UnitSystem units) =>
    [
        leg.Mark,
        $"{Name(leg.Route.Leg.From)} to {Name(leg.Route.Leg.To)}",
        string.Join(", ", new[] { FlowLeg.How(leg.Route.Leg.Carriage, units), FlowLeg.When(leg.Route.Leg.Period) }.Where(t => t.Length > 0)),
        leg.Route.Route is { } route ? LengthText.Distance(route.LengthMm, units) : "no way",
    ];

    private static string Name(Stop stop) => stop switch
    {
        StationStop station => FormattableString.Invariant($"{station.Station.Item} {station.Station.Caption}"),
        RoomStop room => room.Room.Label,
        OpeningStop opening => OpeningLayer.Mark(opening.Opening),
        _ => stop.Name,
    };
}
