using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Openings;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Placing;

/// <summary>
/// Works out every place, each after those that it hangs on. A node is one axis of one thing. The walk keeps its own
/// stack, so that a row of thousands of things, each east of the last, is no deeper than any other.
/// </summary>
/// <param name="thickness">Of partitions: beside a room means beside its wall.</param>
internal sealed class Solver(NameTable names, Length thickness, Reports reports)
{
    private readonly record struct Node(Placeable Thing, Axis Axis);

    private enum State
    {
        Open,
        Done,
    }

    private readonly Dictionary<Node, State> states = [];

    public void Solve(IEnumerable<Placeable> things)
    {
        foreach (var thing in things)
        {
            foreach (var axis in AxesOf(thing))
            {
                Walk(new Node(thing, axis));
            }
        }
    }

    private static IEnumerable<Axis> AxesOf(Placeable thing)
        => thing.Wall is { } wall ? [wall.Along] : [Axis.WestEast, Axis.SouthNorth];

    private void Walk(Node start)
    {
        var path = new Stack<(Node Node, IEnumerator<Node> Onward)>();
        Enter(path, start);
        while (path.TryPeek(out var top))
        {
            if (top.Onward.MoveNext())
            {
                var next = top.Onward.Current;
                if (!states.TryGetValue(next, out var state))
                {
                    Enter(path, next);
                }
                else if (state == State.Open)
                {
                    ReportCircle([.. path.Select(p => p.Node).TakeWhile(n => n != next), next]);
                }

                continue;
            }

            path.Pop();
            states[top.Node] = State.Done;
            Evaluate(top.Node);
        }
    }

    private void Enter(Stack<(Node Node, IEnumerator<Node> Onward)> path, Node node)
    {
        if (states.TryAdd(node, State.Open))
        {
            path.Push((node, Needs(node).GetEnumerator()));
        }
    }

    private IEnumerable<Node> Needs(Node node)
    {
        if (node.Thing.Failed || node.Thing.Fixes(node.Axis) is not { } term)
        {
            yield break;
        }

        if (term.Other() is { } name
            && names.Find(name.Text)?.Placeable is { } other
            && (other.Wall is null || other.Wall.Along == node.Axis))
        {
            yield return new Node(other, node.Axis);
        }

        if (NeedsOtherAxis(node))
        {
            yield return node with { Axis = node.Axis.Other() };
        }
    }

    // In a stepped room the face that a thing stands against depends on where along it the thing stands. In a corner
    // x comes first, from the outermost face.
    private static bool NeedsOtherAxis(Node node)
        => !node.Thing.Room.Floor.IsRectangle
            && node.Thing.Wall is null
            && IsAtFace(node.Thing.Fixes(node.Axis))
            && (node.Axis == Axis.SouthNorth || !IsAtFace(node.Thing.Fixes(Axis.SouthNorth)));

    private static bool IsAtFace(PlaceTerm? term) => term is AgainstTerm or CornerTerm;

    private void Evaluate(Node node)
    {
        var thing = node.Thing;
        if (thing.Failed || thing.Fixes(node.Axis) is not { } term)
        {
            return;
        }

        var start = thing.Wall is null ? InRoom(node, term) : AlongWall(thing, thing.Wall, term);
        if (start is { } found)
        {
            thing.SetStart(node.Axis, found);
        }
        else
        {
            thing.Failed = true;
        }
    }

    private Length? InRoom(Node node, PlaceTerm term)
    {
        var size = node.Thing.Size(node.Axis);
        var room = node.Thing.Room.Floor.Bounds.On(node.Axis);
        return term switch
        {
            AgainstTerm a => At(node, a.Wall.Side, size),
            CornerTerm c => At(node, node.Axis == Axis.WestEast ? c.EastOrWest : c.NorthOrSouth, size),
            FromTerm f => f.Face.Side == node.Axis.Low() ? room.Low + f.Distance.Value : room.High - f.Distance.Value - size,
            AtTerm p => room.Low + (node.Axis == Axis.WestEast ? p.X : p.Y).Value,
            CentredTerm => room.CentredStart(size),
            _ => FromOther(term, node.Axis, size),
        };
    }

    private static Length At(Node node, Side wall, Length size)
    {
        var floor = node.Thing.Room.Floor;
        var face = floor.Bounds.Of(wall);
        if (NeedsOtherAxis(node) && node.Thing.Start(node.Axis.Other()) is { } along)
        {
            face = floor.FaceTowards(wall, along, along + node.Thing.Size(node.Axis.Other())) ?? face;
        }

        return wall == node.Axis.Low() ? face : face - size;
    }

    private Length? FromOther(PlaceTerm term, Axis axis, Length size)
    {
        if (term.Other() is not { } name || SpanOf(name.Text, axis) is not { } other)
        {
            return null;
        }

        if (term is BesideTerm && names.Find(name.Text)?.Room is not null)
        {
            other = new Span(other.Low - thickness, other.High + thickness);
        }

        return term switch
        {
            BesideTerm b => b.Direction.Side == axis.High() ? other.High + GapOf(b) : other.Low - GapOf(b) - size,
            FlushTerm f => f.Edge.Side == axis.High() ? other.High - size : other.Low,
            _ => other.CentredStart(size),
        };
    }

    private static Length GapOf(BesideTerm term) => term.Gap?.Value ?? Length.Zero;

    private Span? SpanOf(string name, Axis axis)
    {
        var named = names.Find(name);
        if (named?.Room is { } room)
        {
            return room.Floor.Bounds.On(axis);
        }

        if (named?.Placeable is not { } thing || thing.Failed)
        {
            return null;
        }

        if (thing.Wall is { } wall && wall.Along != axis)
        {
            var middle = (wall.Stretches[0].Near + wall.Stretches[0].Far) / 2;
            return new Span(middle, middle);
        }

        var size = thing.Wall?.Width ?? thing.Size(axis);
        return thing.Start(axis) is { } start ? new Span(start, start + size) : null;
    }

    private Length? AlongWall(Placeable opening, OpeningWall wall, PlaceTerm term)
    {
        if (term.Other() is not null)
        {
            return FromOther(term, wall.Along, wall.Width);
        }

        // Measured on the stretch nearest to the end that is measured from, among those long enough.
        var fitting = wall.Stretches.Where(s => s.Run >= wall.Width).DefaultIfEmpty(wall.Stretches[0]).ToList();
        return term switch
        {
            FromTerm f when f.Face.Side == wall.Along.Low() => fitting.MinBy(s => s.From.Nanometres).From + f.Distance.Value,
            FromTerm f => fitting.MaxBy(s => s.To.Nanometres).To - f.Distance.Value - wall.Width,
            CornerTerm c when (wall.Along == Axis.WestEast ? c.EastOrWest : c.NorthOrSouth) == wall.Along.Low()
                => fitting.MinBy(s => s.From.Nanometres).From,
            CornerTerm => fitting.MaxBy(s => s.To.Nanometres).To - wall.Width,
            CentredTerm => new Span(fitting[0].From, fitting[0].To).CentredStart(wall.Width),
            _ => opening.Room.Floor.Bounds.On(wall.Along).CentredStart(wall.Width),
        };
    }

    private void ReportCircle(IReadOnlyList<Node> backwards)
    {
        var circle = backwards.Reverse().Select(n => n.Thing).Distinct().ToList();
        foreach (var thing in circle)
        {
            thing.Failed = true;
        }

        string[] shown = [.. circle.Take(LongestShown).Select(t => $"`{t.Id}`")];
        string more = circle.Count > LongestShown ? ", ..." : "";
        var first = circle[0];
        reports.Error(
            "place-circle",
            circle.Count == 1
                ? $"the place of `{first.Id}` hangs on itself"
                : $"places go round in a circle: {string.Join(", ", shown)}{more}, and back to `{first.Id}`",
            (first.Fixes(backwards[^1].Axis) ?? first.Place[0]).Span,
            "give one of them a place of its own, such as `300 from west`",
            [.. circle.Skip(1).Take(LongestShown).Select(t => new RelatedSpan(t.Span, $"`{t.Id}` is here"))]);
    }

    /// <summary>Names of a long circle shown in one sentence; own choice.</summary>
    private const int LongestShown = 8;
}
