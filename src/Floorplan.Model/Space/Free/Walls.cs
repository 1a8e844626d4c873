using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Free;

/// <summary>The faces of rooms and of the shell's outside as straight pieces, with holes where openings stand open.</summary>
internal static class Walls
{
    public static List<(Coordinate A, Coordinate B)> Of(Plan plan, IReadOnlyCollection<Passage> open)
    {
        var pieces = new List<(Coordinate, Coordinate)>();
        var holes = new NetTopologySuite.Index.Strtree.STRtree<Envelope>();
        foreach (var passage in open)
        {
            holes.Insert(passage.Hole, passage.Hole);
            pieces.Add((passage.Point(passage.Low, passage.Near), passage.Point(passage.Low, passage.Far)));
            pieces.Add((passage.Point(passage.High, passage.Near), passage.Point(passage.High, passage.Far)));
        }

        foreach (var outline in plan.Rooms.Select(r => r.Floor).Append(plan.Shell.Outside))
        {
            AddRing(outline.ExteriorRing, holes, pieces);
            foreach (var ring in outline.InteriorRings)
            {
                AddRing(ring, holes, pieces);
            }
        }

        return pieces;
    }

    private static void AddRing(LineString ring, NetTopologySuite.Index.Strtree.STRtree<Envelope> holes, List<(Coordinate, Coordinate)> pieces)
    {
        var corners = ring.Coordinates;
        for (int i = 0; i + 1 < corners.Length; i++)
        {
            Coordinate a = corners[i], b = corners[i + 1];
            double done = 0;
            var cuts = holes.Count == 0 ? [] : holes.Query(new Envelope(a, b)).Select(h => Inside(a, b, h)).Where(c => c.To > c.From);
            foreach (var (from, to) in cuts.Order())
            {
                if (from > done)
                {
                    pieces.Add((Line.At(a, b, done), Line.At(a, b, from)));
                }

                done = Math.Max(done, to);
            }

            if (done < 1)
            {
                pieces.Add((Line.At(a, b, done), b));
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
