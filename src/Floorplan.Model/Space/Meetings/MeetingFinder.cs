using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Space.Meetings;

/// <summary>Finds where routes of different flows cross, run together, or pass the same opening.</summary>
internal static class MeetingFinder
{
    /// <summary>
    /// Routes whose middles come nearer than this share floor, in mm. Own assumption: half the width of a person carrying, and play.
    /// </summary>
    private const double Corridor = 300;

    /// <summary>More meetings than this nobody reads; a plan of nothing but legs would fill the memory. Own assumption.</summary>
    private const int Most = 100_000;

    /// <summary>
    /// A flow of more pieces than this has an index of its own, so that its pieces need not pass each other over. Own assumption.
    /// </summary>
    private const int Busy = 1000;

    public static IReadOnlyList<Meeting> Find(IReadOnlyList<LegRoute> legs)
    {
        var pieces = new List<PathPiece>();
        for (int leg = 0; leg < legs.Count; leg++)
        {
            var points = legs[leg].Route?.Path.Coordinates ?? [];
            double walked = 0;
            for (int i = 0; i + 1 < points.Length; i++)
            {
                var piece = new PathPiece(leg, points[i], points[i + 1], walked);
                walked += points[i].Distance(points[i + 1]);
                pieces.Add(piece);
            }
        }

        var indexes = Indexes(legs, pieces);
        var pairs = new SortedDictionary<(int First, int Second), Shared>();
        foreach (var piece in pieces)
        {
            if (pairs.Count >= Most)
            {
                break;
            }

            var near = new Envelope(piece.A, piece.B);
            near.ExpandBy(Corridor);
            foreach (var other in indexes.Where(i => !ReferenceEquals(i.Only, legs[piece.Leg].Flow)).SelectMany(i => i.Tree.Query(near)))
            {
                Steps.Beside(1);
                if (other.Leg > piece.Leg && !ReferenceEquals(legs[other.Leg].Flow, legs[piece.Leg].Flow)
                    && Nearness.Part(piece.A, piece.B, other.A, other.B, Corridor) is { } part)
                {
                    Of(piece.Leg, other.Leg).Add(piece, part, Nearness.Crossing(piece.A, piece.B, other.A, other.B));
                }
            }
        }

        AddOpenings(legs, pairs);
        return [.. pairs.Select(p => p.Value.ToMeeting(legs[p.Key.First], legs[p.Key.Second]))];

        Shared Of(int first, int second) =>
            pairs.TryGetValue((first, second), out var shared) ? shared : pairs[(first, second)] = new Shared();
    }

    /// <summary>One index for all flows together, and one for each busy flow alone.</summary>
    private static List<(Flow? Only, STRtree<PathPiece> Tree)> Indexes(IReadOnlyList<LegRoute> legs, List<PathPiece> pieces)
    {
        var busy = pieces.GroupBy(p => legs[p.Leg].Flow, ReferenceEqualityComparer.Instance).Where(g => g.Skip(Busy).Any())
            .Select(g => (Flow)g.Key!).ToHashSet<Flow>(ReferenceEqualityComparer.Instance);
        var indexes = new List<(Flow? Only, STRtree<PathPiece> Tree)> { (null, new STRtree<PathPiece>()) };
        indexes.AddRange(busy.Select(flow => ((Flow?)flow, new STRtree<PathPiece>())));
        foreach (var piece in pieces)
        {
            var flow = legs[piece.Leg].Flow;
            var tree = busy.Contains(flow) ? indexes.First(i => ReferenceEquals(i.Only, flow)).Tree : indexes[0].Tree;
            tree.Insert(new Envelope(piece.A, piece.B), piece);
        }

        return indexes;
    }

    private static void AddOpenings(IReadOnlyList<LegRoute> legs, SortedDictionary<(int First, int Second), Shared> pairs)
    {
        var users = new Dictionary<string, List<(int Leg, Opening Opening)>>();
        for (int leg = 0; leg < legs.Count; leg++)
        {
            foreach (var opening in (legs[leg].Route?.Openings ?? []).DistinctBy(o => o.Id))
            {
                (users.TryGetValue(opening.Id, out var list) ? list : users[opening.Id] = []).Add((leg, opening));
            }
        }

        foreach (var list in users.Values)
        {
            for (int i = 0; i < list.Count && pairs.Count < Most; i++)
            {
                for (int j = i + 1; j < list.Count; j++)
                {
                    if (!ReferenceEquals(legs[list[i].Leg].Flow, legs[list[j].Leg].Flow))
                    {
                        pairs.TryAdd((list[i].Leg, list[j].Leg), new Shared(list[i].Opening.Centre.Coordinate));
                    }
                }
            }
        }
    }
}

/// <summary>One straight piece of a leg's route.</summary>
/// <param name="Walked">Length of the route before it.</param>
internal sealed record PathPiece(int Leg, Coordinate A, Coordinate B, double Walked)
{
    public double Length => A.Distance(B);
}
