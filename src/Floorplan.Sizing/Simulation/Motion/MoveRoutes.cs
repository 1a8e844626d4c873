using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Simulation.Motion;

/// <summary>The real ways of a line on the floor, in plan millimetres.</summary>
/// <param name="Moves">By move; null where nothing is walked, as from where items are at the start.</param>
/// <param name="Bins">By bin: from where it stands to where it is emptied; null where that is not said.</param>
public sealed record MoveRoutes(
    IReadOnlyList<IReadOnlyList<(double X, double Y)>?> Moves, IReadOnlyList<IReadOnlyList<(double X, double Y)>?> Bins)
{
    internal static MoveRoutes Of(PlanFacts facts, ProductLine line)
    {
        var product = Ways(facts, Stream.Product).ToLookup(w => (w.From.Name, w.To.Name));
        var taken = new Dictionary<(string, string), int>();
        var waste = Ways(facts, Stream.Waste).ToLookup(w => w.From.Name);
        return new MoveRoutes(
            [.. line.Moves.Select(m => m.IsBack
                ? Back(facts.Day.Planned.Stops[m.From], facts.Day.Planned.Stops[m.To])
                : Next((line.Steps[m.From].Name, line.Steps[m.To].Name)))],
            [.. line.Bins.Select(b => waste[b.Name].Select(Path).FirstOrDefault(p => p is not null))]);

        IReadOnlyList<(double X, double Y)>? Back(Stop from, Stop to)
            => SentBack.RouteOf(facts, from, to) is { Path.NumPoints: > 1 } way ? [.. way.Path.Coordinates.Select(c => (c.X, c.Y))] : null;

        // Two flows may have a way between the same places: the line has a move for each, in the order of the flows.
        IReadOnlyList<(double X, double Y)>? Next((string From, string To) key)
        {
            int number = taken.GetValueOrDefault(key);
            taken[key] = number + 1;
            return product[key].Skip(number).Select(Path).FirstOrDefault();
        }
    }

    private static IEnumerable<LineWay> Ways(PlanFacts facts, Stream stream) => facts.Space.LegRoutes
        .Where(l => l.Flow.Stream == stream && l.Leg.Period == Period.During)
        .GroupBy(l => l.Flow, ReferenceEqualityComparer.Instance).SelectMany(LineWay.Of);

    private static IReadOnlyList<(double X, double Y)>? Path(LineWay way)
    {
        List<(double X, double Y)> path =
            [.. way.Legs.Select(l => l.Route).OfType<Route>().SelectMany(r => r.Path.Coordinates).Select(c => (c.X, c.Y))];
        return path.Count > 1 && way.Legs.All(l => l.Route is not null) ? path : null;
    }
}
