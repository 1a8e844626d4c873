using Floorplan.Drawing.Conventions;
using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Flows;

/// <summary>One leg with its mark on the sheet: the letter of its stream and a number within the stream.</summary>
/// <param name="Note">Beside the mark on the plan: how it is carried when not by hand or on foot, and when; may be empty.</param>
public sealed record FlowLeg(string Mark, string Note, LegRoute Route)
{
    /// <summary>
    /// What is drawn, in plan mm: the route, and its step into the opening that it starts or ends at. Empty when there is no way.
    /// </summary>
    public IReadOnlyList<Coordinate> Way { get; } = WayOf(Route);

    public static IReadOnlyList<FlowLeg> Number(IReadOnlyList<LegRoute> routes, UnitSystem units)
    {
        var counts = new Dictionary<Model.Flows.Stream, int>();
        return
        [
            .. routes.Select(r =>
            {
                int number = counts[r.Flow.Stream] = counts.GetValueOrDefault(r.Flow.Stream) + 1;
                string how = r.Leg.Carriage.Kind is CarriageKind.Hand or CarriageKind.Walk ? "" : How(r.Leg.Carriage, units);
                string note = string.Join(", ", new[] { how, When(r.Leg.Period) }.Where(t => t.Length > 0));
                return new FlowLeg(FormattableString.Invariant($"{StreamLook.Of(r.Flow.Stream).Letter}{number}"), note, r);
            }),
        ];
    }

    /// <summary><c>trolley 600</c>, <c>by hand</c>.</summary>
    public static string How(Carriage carriage, UnitSystem units)
    {
        string how = carriage.Kind switch
        {
            CarriageKind.Hand => "by hand",
            CarriageKind.Trolley => "trolley",
            CarriageKind.Rail => "rail",
            CarriageKind.Conveyor => "conveyor",
            CarriageKind.Chute => "chute",
            CarriageKind.Pump => "pump",
            _ => "on foot",
        };
        return carriage.Width is { } width ? how + " " + Tape.For(units).Dimension(width) : how;
    }

    /// <summary>The flow's label, else the name of its stream, with a capital: <c>Offal</c>, <c>Product</c>.</summary>
    public static string NameOf(Flow flow)
    {
        string name = flow.Label.Length > 0 ? flow.Label : StreamLook.Of(flow.Stream).Name;
        return char.ToUpperInvariant(name[0]) + name[1..];
    }

    public static string When(Period period) => period switch
    {
        Period.Before => "before work",
        Period.After => "after work",
        _ => "",
    };

    private static IReadOnlyList<Coordinate> WayOf(LegRoute leg)
    {
        if (leg.Route is null)
        {
            return [];
        }

        var path = leg.Route.Path.Coordinates;
        return [.. Into(leg.Leg.From, path[0]), .. path, .. Into(leg.Leg.To, path[^1])];
    }

    private static IEnumerable<Coordinate> Into(Stop stop, Coordinate end) =>
        stop is OpeningStop { Opening.Centre: var centre } && !centre.Coordinate.Equals2D(end) ? [centre.Coordinate] : [];
}
