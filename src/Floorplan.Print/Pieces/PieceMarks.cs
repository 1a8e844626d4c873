using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Print.Pieces;

/// <summary>What stands round and on the edges of a piece.</summary>
internal sealed class PieceMarks(SceneBuilder scene, PieceGrid grid, PaperBox place)
{
    private const double Height = 2.5;
    private const double Tick = 4;
    private const double MatchRadius = 3;

    private static readonly Pen Thin = new(0.18);
    private static readonly Pen Grey = new(0.25, "#606060");

    /// <summary>A sentence over the piece, and a length that must measure what it says.</summary>
    public void Head(string words)
    {
        double y = place.Top - 2.4;
        double length = place.Width >= 160 ? 100 : 50;
        scene.Text(new TextItem(words, new(place.Right - 5, y), Height, TextAnchor.End, Layers.Text));
        scene.Line(new(place.Left, y), new(place.Left + length, y), Grey, Layers.Marks);
        foreach (double x in (double[])[place.Left, place.Left + length])
        {
            scene.Line(new(x, y - 1), new(x, y + 1), Grey, Layers.Marks);
        }

        string says = length == 100 ? "100 mm (3 15/16 in): measure it" : "50 mm (1 31/32 in)";
        scene.Text(new TextItem(says, new(place.Left + (length / 2), y - 1), 2, TextAnchor.Middle, Layers.Text));
    }

    /// <summary>At each corner two strokes outside the piece, to cut between.</summary>
    public void Ticks()
    {
        foreach (double x in (double[])[place.Left, place.Right])
        {
            double away = x == place.Left ? -Tick : Tick;
            foreach (double y in (double[])[place.Top, place.Bottom])
            {
                double up = y == place.Top ? -Tick : Tick;
                scene.Line(new(x + (away / 4), y), new(x + away, y), Thin, Layers.Marks);
                scene.Line(new(x, y + (up / 4)), new(x, y + up), Thin, Layers.Marks);
            }
        }
    }

    /// <summary>Half circles on edges that meet another piece: they become whole when the pieces lie right.</summary>
    public void Matches(int column, int row)
    {
        foreach (double share in (double[])[0.3, 0.7])
        {
            double x = place.Left + (share * place.Width);
            double y = place.Top + (share * place.Height);
            if (column > 0)
            {
                Half(new(place.Left, y), -90);
            }

            if (column + 1 < grid.Across)
            {
                Half(new(place.Right, y), 90);
            }

            if (row > 0)
            {
                Half(new(x, place.Top), 180);
            }

            if (row + 1 < grid.Down)
            {
                Half(new(x, place.Bottom), 0);
            }
        }
    }

    private void Half(PaperPoint at, double from) => scene.Arc(at, MatchRadius, from, from + 180, Grey, Layers.Marks);
}
