namespace Floorplan.Drawing.Scene;

/// <summary>Items of a scene at another place of the paper.</summary>
internal static class SceneMove
{
    public static SceneItem Moved(this SceneItem item, PaperPoint by) => item switch
    {
        LineItem line => line with { From = line.From + by, To = line.To + by },
        PolylineItem path => path with { Points = path.Points.Moved(by) },
        ArcItem arc => arc with { Centre = arc.Centre + by },
        AreaItem area => area with { Rings = area.Rings.Moved(by) },
        TextItem text => text with { At = text.At + by },
        _ => throw new NotSupportedException($"{item.GetType().Name} cannot be moved"),
    };

    public static HatchArea Moved(this HatchArea hatch, PaperPoint by) => hatch with { Rings = hatch.Rings.Moved(by) };

    private static IReadOnlyList<IReadOnlyList<PaperPoint>> Moved(this IReadOnlyList<IReadOnlyList<PaperPoint>> rings, PaperPoint by)
        => [.. rings.Select(r => r.Moved(by))];

    private static IReadOnlyList<PaperPoint> Moved(this IReadOnlyList<PaperPoint> points, PaperPoint by)
    {
        var moved = new PaperPoint[points.Count];
        for (int i = 0; i < moved.Length; i++)
        {
            moved[i] = points[i] + by;
        }

        return moved;
    }
}
