using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>
/// The shortest way over convex cells in any direction. It grows stretches of edges that are seen from the last corner,
/// the most promising first, and turns only at corners of free floor (interval search after Cui, Harabor and Grastien,
/// "Compromise-free pathfinding on a navigation mesh", IJCAI 2017). The way found is the true shortest one.
/// </summary>
internal sealed class WaySearch(FloorMap map, Func<Opening, bool>? mayPass, Turns turns)
{
    private readonly List<SearchNode> nodes = [];
    private readonly PriorityQueue<int, double> queue = new();
    private readonly Dictionary<int, bool> allowed = [];
    private readonly HashSet<(int Region, int Cell)> goalCells = [];
    private readonly HashSet<int> lookedAt = [];
    private Coordinate? goal;

    /// <summary>Numbers of the regions whose floor or gates it has looked at so far.</summary>
    public IReadOnlyCollection<int> RegionsLookedAt => lookedAt;

    /// <summary>The shortest way from any of some places to one point, which may lie on the gate between two regions.</summary>
    public Way? Find(IReadOnlyList<FreePlace> starts, IReadOnlyList<FreePlace> goals)
    {
        if (goals.Count == 0)
        {
            return null;
        }

        goal = goals[0].Point;
        foreach (var place in goals)
        {
            goalCells.UnionWith(place.Cells.Select(c => (place.Region.Number, c)));
        }

        Start(starts);
        while (queue.TryDequeue(out int number, out _))
        {
            if (nodes[number].Edge < 0)
            {
                return Trace(nodes[number], goal);
            }

            Expand(number);
        }

        return null;
    }

    /// <summary>
    /// Grows over all floor that can be reached and gives the number of every stretch that counts to <paramref name="visit"/>, nearest
    /// first. Then <see cref="Turns"/> knows the way to each corner.
    /// </summary>
    public void Flood(IReadOnlyList<FreePlace> starts, Action<int> visit)
    {
        Start(starts);
        while (queue.TryDequeue(out int number, out _))
        {
            if (Expand(number))
            {
                visit(number);
            }
        }
    }

    public SearchNode Node(int number) => nodes[number];

    /// <summary>
    /// After <see cref="Flood"/>: the way through a stretch to a point of the cell behind it, which <see cref="SearchNode.EndingAt"/>
    /// must give.
    /// </summary>
    public Way WayTo(int number, Coordinate p) => Trace(nodes[number].EndingAt(p)!.Value with { Parent = number }, p);

    private void Start(IReadOnlyList<FreePlace> starts)
    {
        turns.Clear();
        foreach (var place in starts)
        {
            lookedAt.Add(place.Region.Number);
            foreach (int cell in place.Cells)
            {
                if (goal is not null && goalCells.Contains((place.Region.Number, cell)))
                {
                    var whole = new SearchNode(place.Point, 0, -1, -1, place.Region.Number, -1, goal, -1, goal, -1, null);
                    Enqueue(whole, place.Point.Distance(goal));
                }

                Leave(place, cell);
            }
        }
    }

    /// <summary>Everything that can be seen from a start through the edges of its own cell.</summary>
    private void Leave(FreePlace place, int cell)
    {
        var mesh = place.Region.Mesh;
        var (start, end) = mesh.EdgesOf(cell);
        for (int e = start; e < end; e++)
        {
            Coordinate a = mesh.From(e), b = mesh.To(e);
            var node = new SearchNode(place.Point, 0, -1, -1, place.Region.Number, e, b, -1, a, -1, null);
            if (Line.Nearest(a, b, place.Point).Distance(place.Point) > FloorMesh.Same)
            {
                Push(node, place.Region, e, b, mesh.Corner[mesh.Next(e)], a, mesh.Corner[e]);
            }
            else if (mesh.Opposite[e] < 0)
            {
                // On a gate: both halves are seen. The neighbour cell of any other edge holds the start as well.
                Push(node, place.Region, e, b, mesh.Corner[mesh.Next(e)], place.Point, -1);
                Push(node, place.Region, e, place.Point, -1, a, mesh.Corner[e]);
            }
        }
    }

    /// <summary>False when a shorter way to the same corner has been found since the node was made.</summary>
    private bool Expand(int number)
    {
        var node = nodes[number];
        var region = map.Region(node.Region);
        var mesh = region.Mesh;
        if ((node.Turn >= 0 && node.Walked > turns.Distance(node.Turn / 2) + Turns.Equal) || IsBeaten(node, region))
        {
            return false;
        }

        if (goal is not null && goalCells.Contains((node.Region, mesh.Cell[node.Edge])))
        {
            Finish(node, number);
        }

        var start = RimPoint.StartOf(mesh, mesh.Next(node.Edge));
        var end = RimPoint.StartOf(mesh, node.Edge);
        var straight = node with { Parent = number, Gate = null };
        if (node.AtEnd)
        {
            Show(straight, region, start, end, node.Edge);
            return true;
        }

        var right = SightLine.RightExit(mesh, node);
        var left = SightLine.LeftExit(mesh, node);
        Show(straight, region, right, left, node.Edge);
        if (node.RightCorner >= 0 && Around(node, number, region, node.Right, node.RightCorner, false) is { } onRight)
        {
            Show(onRight, region, start, right, node.Edge);
        }

        if (node.LeftCorner >= 0 && Around(node, number, region, node.Left, node.LeftCorner, true) is { } onLeft)
        {
            Show(onLeft, region, left, end, node.Edge);
        }

        return true;
    }

    /// <summary>Pushes the rim of a cell from one point to another, anticlockwise, edge by edge.</summary>
    private void Show(SearchNode node, FreeRegion region, RimPoint from, RimPoint to, int entry)
    {
        var mesh = region.Mesh;
        if (from.IsPast(to, mesh, entry))
        {
            return;
        }

        var (point, corner) = (from.Point, from.Corner);
        for (int e = from.Edge; e != entry; e = mesh.Next(e))
        {
            bool last = e == to.Edge;
            int next = mesh.Next(e);
            var (end, endCorner) = last ? (to.Point, to.Corner) : (mesh.From(next), mesh.Corner[next]);
            Push(node, region, e, end, endCorner, point, corner);
            if (last)
            {
                return;
            }

            (point, corner) = (end, endCorner);
        }
    }

    private SearchNode? Around(SearchNode node, int number, FreeRegion region, Coordinate corner, int cornerNumber, bool left)
    {
        int turn = Turns.Of(region.FirstCorner + cornerNumber, left);
        double walked = node.Walked + node.Root.Distance(corner);
        return turns.Improve(turn, walked, node.Turn)
            ? node with { Root = corner, Walked = walked, Turn = turn, Parent = number, Gate = null }
            : null;
    }

    private void Push(SearchNode seen, FreeRegion region, int edge, Coordinate left, int leftCorner, Coordinate right, int rightCorner)
    {
        Note(seen, region, leftCorner, left);
        Note(seen, region, rightCorner, right);
        if (left.Distance(right) <= FloorMesh.Same)
        {
            return;
        }

        int opposite = region.Mesh.Opposite[edge];
        if (opposite >= 0)
        {
            Add(seen with
            {
                Region = region.Number,
                Edge = opposite,
                Left = left,
                LeftCorner = leftCorner,
                Right = right,
                RightCorner = rightCorner
            });
            return;
        }

        foreach (var passage in region.PassagesAt(edge))
        {
            if (!Allows(passage) || map.Region(passage.OtherSide(region.Room)) is not { } other)
            {
                continue;
            }

            lookedAt.Add(other.Number);
            foreach (int beyond in other.GateEdges(passage))
            {
                if (GateCrossing.Of(seen, passage, other, beyond, left, right) is { } beyondGate)
                {
                    Add(beyondGate);
                }
            }
        }
    }

    private void Note(SearchNode seen, FreeRegion region, int corner, Coordinate at)
    {
        if (corner >= 0)
        {
            turns.Note(region.FirstCorner + corner, seen.Walked + seen.Root.Distance(at));
        }
    }

    private bool Allows(Passage passage)
    {
        if (!allowed.TryGetValue(passage.Number, out bool yes))
        {
            allowed[passage.Number] = yes = mayPass is null || mayPass(passage.Opening);
        }

        return yes;
    }

    private void Add(SearchNode node)
    {
        // Seen end on, an edge hides what lies behind it; the way slides along it to its nearer end and turns there.
        if (!node.AtEnd && Math.Abs(Line.Offset(node.Left, node.Right, node.Root)) <= FloorMesh.Same)
        {
            bool left = node.Root.Distance(node.Left) < node.Root.Distance(node.Right);
            int corner = left ? node.LeftCorner : node.RightCorner;
            if (corner < 0
                || Around(node, node.Parent, map.Region(node.Region), left ? node.Left : node.Right, corner, left) is not { } around)
            {
                return;
            }

            node = around with { Gate = node.Gate };
        }

        var region = map.Region(node.Region);
        if (node.Gate is not null)
        {
            // The other rim has corners of its own.
            Note(node, region, node.LeftCorner, node.Left);
            Note(node, region, node.RightCorner, node.Right);
        }

        if (IsBeaten(node, region) || HasGoneRound(node))
        {
            return;
        }

        Enqueue(node, node.Walked + (goal is null ? Line.Nearest(node.Left, node.Right, node.Root).Distance(node.Root) : node.Ahead(goal)));
    }

    /// <summary>
    /// Whether every point of the stretch is reached sooner along its own edge, from the corner at either end of that edge.
    /// It is so for all of them when it is so for the far end (the filter of Xin and Wang, ACM Trans. Graph. 28(4), 2009).
    /// </summary>
    private bool IsBeaten(SearchNode node, FreeRegion region)
    {
        var mesh = region.Mesh;
        int left = mesh.Corner[node.Edge], right = mesh.Corner[mesh.Next(node.Edge)];
        return Beats(left, node.Right) || Beats(right, node.Left);

        bool Beats(int corner, Coordinate end)
        {
            double known = turns.Distance(region.FirstCorner + corner);
            return !double.IsInfinity(known)
                && node.Walked + node.Root.Distance(end) > known + mesh.Points[corner].Distance(end) + Turns.Equal;
        }
    }

    /// <summary>
    /// Whether a stretch that swings about the corner it turns at comes to an edge once more: where floor lies all round a corner it
    /// would swing for ever, and no shortest way turns so far.
    /// </summary>
    private bool HasGoneRound(SearchNode node)
    {
        if (node.Turn < 0 || !(node.Root.Equals2D(node.Left) || node.Root.Equals2D(node.Right)))
        {
            return false;
        }

        for (int n = node.Parent; n >= 0 && nodes[n].Turn == node.Turn; n = nodes[n].Parent)
        {
            if (nodes[n].Edge == node.Edge && nodes[n].Region == node.Region)
            {
                return true;
            }
        }

        return false;
    }

    private void Enqueue(SearchNode node, double length)
    {
        Steps.Take(Steps.Way);
        nodes.Add(node);
        queue.Enqueue(nodes.Count - 1, length);
    }

    private void Finish(SearchNode node, int number)
    {
        if (goal is not null && node.EndingAt(goal) is { } done)
        {
            Enqueue(done with { Parent = number }, done.Walked + done.Root.Distance(goal));
        }
    }

    private Way Trace(SearchNode last, Coordinate end)
    {
        var points = new List<Coordinate> { end };
        var gates = new List<Passage>();
        var room = map.Region(last.Region).Room;
        for (SearchNode? at = last; at is { } node; at = node.Parent < 0 ? null : nodes[node.Parent])
        {
            if (!node.Root.Equals2D(points[^1]))
            {
                points.Add(node.Root);
            }

            if (node.Gate is { } gate)
            {
                room = gate.OtherSide(map.Region(node.Region).Room);
                gates.Add(gate);
            }
        }

        points.Reverse();
        gates.Reverse();
        return new Way(points, gates, room);
    }
}
