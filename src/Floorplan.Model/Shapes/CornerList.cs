using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shapes;

/// <summary>Turns the corners of a right-angled outline into a region.</summary>
public static class CornerList
{
    /// <summary>The first corner whose edge to the next one is neither east-west nor north-south, or null.</summary>
    public static int? FirstSlanted(IReadOnlyList<PlanPoint> corners)
    {
        for (int i = 0; i < corners.Count; i++)
        {
            var next = corners[(i + 1) % corners.Count];
            if ((corners[i].X == next.X) == (corners[i].Y == next.Y))
            {
                return i;
            }
        }

        return null;
    }

    /// <summary>Right angles are required; crossing outlines give the parts that an odd number of edges lies west of.</summary>
    public static Region ToRegion(IReadOnlyList<PlanPoint> corners)
    {
        var levels = corners.Select(c => c.Y).Distinct().Order().ToList();
        var boxes = new List<Box>();
        for (int i = 0; i + 1 < levels.Count; i++)
        {
            var crossings = Crossings(corners, levels[i], levels[i + 1]);
            for (int k = 0; k + 1 < crossings.Count; k += 2)
            {
                boxes.Add(new Box(crossings[k], levels[i], crossings[k + 1], levels[i + 1]));
            }
        }

        return Region.Of(boxes);
    }

    private static List<Length> Crossings(IReadOnlyList<PlanPoint> corners, Length south, Length north)
    {
        var crossings = new List<Length>();
        for (int i = 0; i < corners.Count; i++)
        {
            var a = corners[i];
            var b = corners[(i + 1) % corners.Count];
            if (a.X == b.X && Length.Min(a.Y, b.Y) <= south && Length.Max(a.Y, b.Y) >= north)
            {
                crossings.Add(a.X);
            }
        }

        crossings.Sort();
        return crossings;
    }
}
