using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>How much of a page stays blank, before it is drawn: cells of 15 mm without anything in them.</summary>
internal sealed class InkEstimate
{
    private const double Cell = 15;

    /// <summary>A view keeps paper round it for labels, most of which stays blank; mm, own estimate.</summary>
    private const double ViewMargin = 8;

    private readonly PageSpace space;
    private readonly double[,] inked;

    public InkEstimate(PageSpace space)
    {
        this.space = space;
        inked = new double[(int)Math.Ceiling(space.Inside.Width / Cell), (int)Math.Ceiling(space.Inside.Height / Cell)];
        Add(space.Title);
    }

    /// <summary>From 0 to 1.</summary>
    public double Blank => 1 - (inked.Cast<double>().Sum() / inked.Length);

    public void AddView(PaperBox box, double density) => Add(box.Grown(-ViewMargin), density);

    public void Add(PaperBox box, double density = 1)
    {
        for (int x = At(box.Left, space.Inside.Left, 0); x <= At(box.Right, space.Inside.Left, 0); x++)
        {
            for (int y = At(box.Top, space.Inside.Top, 1); y <= At(box.Bottom, space.Inside.Top, 1); y++)
            {
                inked[x, y] = Math.Max(inked[x, y], density);
            }
        }
    }

    private int At(double place, double from, int axis) => Math.Clamp((int)((place - from) / Cell), 0, inked.GetLength(axis) - 1);
}
