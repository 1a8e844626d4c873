using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Space.Free;

/// <summary>The faces of rooms and of the shell's outside as straight pieces, with holes where openings stand open.</summary>
internal static class Walls
{
    public static List<WallPiece> Of(Plan plan, IReadOnlyCollection<Passage> open)
    {
        var pieces = new List<WallPiece>();
        var holes = new STRtree<Envelope>();
        foreach (var passage in open)
        {
            holes.Insert(passage.Hole, passage.Hole);
            pieces.Add(new(passage.Point(passage.Low, passage.Near), passage.Point(passage.Low, passage.Far), WallPiece.Jamb));
            pieces.Add(new(passage.Point(passage.High, passage.Near), passage.Point(passage.High, passage.Far), WallPiece.Jamb));
        }

        for (int owner = 0; owner <= plan.Rooms.Count; owner++)
        {
            var outline = owner < plan.Rooms.Count ? plan.Rooms[owner].Floor : plan.Shell.Outside;
            AddRing(outline.ExteriorRing, owner, holes, pieces);
            foreach (var ring in outline.InteriorRings)
            {
                AddRing(ring, owner, holes, pieces);
            }
        }

        return pieces;
    }

    private static void AddRing(LineString ring, int owner, STRtree<Envelope> holes, List<WallPiece> pieces)
    {
        var corners = ring.Coordinates;
        for (int i = 0; i + 1 < corners.Length; i++)
        {
            Coordinate a = corners[i], b = corners[i + 1];
            double done = 0;
            var cuts = holes.IsEmpty ? [] : holes.Query(new Envelope(a, b)).Select(h => Inside(a, b, h)).Where(c => c.To > c.From);
            foreach (var (from, to) in cuts.Order())
            {
                if (from > done)
                {
                    pieces.Add(new(Line.At(a, b, done), Line.At(a, b, from), owner));
                }

                done = Math.Max(done, to);
            }

            if (done < 1)
            {
                pieces.Add(new(Line.At(a, b, done), b, owner));
            }
        }
    }

    /// <summary>The part of a to b within a box, as parts of its length (Liang and Barsky).</summary>
    private static (double From, double To) Inside(Coordinate a, Coordinate b, Envelope box)
    {
        double from = 0, to = 1;
        Clip(b.X - a.X, box.MinX - a.X, box.MaxX - a.X);
        Clip(b.Y - a.Y, box.MinY - a.Y, box.MaxY - a.Y);
        return (from, to);

        void Clip(double step, double low, double high)
        {
            if (step == 0)
            {
                if (low > 0 || high < 0)
                {
                    to = -1;
                }

                return;
            }

            double enter = Math.Min(low / step, high / step), leave = Math.Max(low / step, high / step);
            from = Math.Max(from, enter);
            to = Math.Min(to, leave);
        }
    }
}

/// <summary>A straight piece of a wall's face.</summary>
/// <param name="Owner">Number of the room that it faces, the number of rooms for the ground outside, or <see cref="Jamb"/>.</param>
internal readonly record struct WallPiece(Coordinate A, Coordinate B, int Owner)
{
    /// <summary>The side of an open opening, which belongs to both rooms.</summary>
    public const int Jamb = -1;

    public Envelope Box => new(A, B);

    public List<Coordinate> Ring => A.Equals2D(B) ? [A] : [A, B];
}
