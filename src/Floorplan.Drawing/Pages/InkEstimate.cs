using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>How much of a page stays blank, before it is drawn: cells of 15 mm without anything in them.</summary>
internal sealed class InkEstimate
{
    private const double Cell = 15;

    /// <summary>A view keeps paper round it for labels, most of which stays blank; mm, own estimate.</summary>
    private const double ViewMargin = 8;

    private readonly PaperBox inside;
    private readonly int across;
    private readonly int down;

    /// <summary>Row by row, from 0 to 1.</summary>
    private readonly double[] cells;
    private double ink;

    public InkEstimate(PageSpace space, IEnumerable<PlacedView> views)
    {
        inside = space.Inside;
        across = (int)Math.Ceiling(inside.Width / Cell);
        down = (int)Math.Ceiling(inside.Height / Cell);
        cells = new double[across * down];
        Add(space.Title);
        foreach (var view in views)
        {
            Add(view.Box.Grown(-ViewMargin), view.View.Density);
            Add(view.Strip);
        }
    }

    private InkEstimate(InkEstimate other)
    {
        (inside, across, down, ink) = (other.inside, other.across, other.down, other.ink);
        cells = [.. other.cells];
    }

    /// <summary>From 0 to 1.</summary>
    public double Blank => 1 - (ink / cells.Length);

    public InkEstimate Copy() => new(this);

    public void Add(PaperBox box, double density = 1)
    {
        int right = At(box.Right - inside.Left, across);
        int bottom = At(box.Bottom - inside.Top, down);
        for (int y = At(box.Top - inside.Top, down); y <= bottom; y++)
        {
            for (int x = At(box.Left - inside.Left, across); x <= right; x++)
            {
                ref double cell = ref cells[(y * across) + x];
                if (density > cell)
                {
                    ink += density - cell;
                    cell = density;
                }
            }
        }
    }

    private static int At(double from, int count) => Math.Clamp((int)(from / Cell), 0, count - 1);
}
