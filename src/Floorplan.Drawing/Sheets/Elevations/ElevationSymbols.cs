using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;

namespace Floorplan.Drawing.Sheets.Elevations;

/// <summary>How an elevation shows things: the same drawing in a view and in the legend.</summary>
internal static class ElevationSymbols
{
    /// <summary>Of the ring of a point, mm of paper.</summary>
    public const double PointRadius = 1;

    /// <summary>Something that stands along the wall; dashed when it hangs.</summary>
    public static void Item(SymbolBrush brush, PaperBox box, bool hung)
    {
        brush.Fill(box, Palette.White);
        brush.Box(box, hung ? brush.Dashed : brush.Symbol);
    }

    /// <summary>A partition, seen from its end: hatched where it is thick enough on paper, as on plans.</summary>
    public static void Partition(SymbolBrush brush, PaperBox box)
    {
        bool hatched = IsHatched(brush, box.Width);
        if (hatched)
        {
            string layer = brush.Layer == Layers.Wall ? Layers.WallHatch : brush.Layer;
            brush.Scene.Hatch(box, HatchStyle.Wall, new Pen(brush.Standard.Fine), layer, brush.Group);
        }
        else
        {
            brush.Fill(box, Palette.Grey);
        }

        (brush with { Band = Band.Wall }).Box(box, hatched ? new Pen(brush.Standard.Wide) : brush.Narrow);
    }

    /// <param name="thickness">On paper, mm.</param>
    private static bool IsHatched(SymbolBrush brush, double thickness) => thickness >= brush.Standard.FilledWallBelow - 1e-9;

    /// <summary>A point of water, power or air on the wall: a ring with a cross, whose middle is at the height that is given.</summary>
    public static void Point(SymbolBrush brush, PaperPoint at)
    {
        brush.Circle(at, PointRadius, brush.Symbol);
        brush.Line(at - new PaperPoint(PointRadius, 0), at + new PaperPoint(PointRadius, 0), brush.Narrow);
        brush.Line(at - new PaperPoint(0, PointRadius), at + new PaperPoint(0, PointRadius), brush.Narrow);
    }
}
