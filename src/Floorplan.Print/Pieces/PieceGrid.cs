using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Print.Pieces;

/// <summary>How the drawing space of a sheet is cut into pieces that a small printer can print at true size.</summary>
/// <param name="Paper">As it goes through the printer.</param>
/// <param name="Space">The drawing space of the sheet, inside its frame and the frame's line.</param>
public sealed record PieceGrid(PaperSize Paper, PaperBox Space, int Across, int Down)
{
    /// <summary>Most printers leave this much of each edge white, mm: a quarter of an inch. Own assumption.</summary>
    public const double Margin = 6.35;

    /// <summary>Over each piece, for what it is and a length to check the print by, mm.</summary>
    public const double Head = 7;

    /// <summary>Most of the frame's line, half of which is outside the drawing space: two letter pages then hold 11 x 17 in.</summary>
    private const double FrameLine = 0.3;

    public int Count => Across * Down;

    /// <summary>The fewest pieces, with the paper upright or lying.</summary>
    public static PieceGrid Of(SheetScene sheet, PaperSize paper)
    {
        var space = sheet.Inside.Grown(FrameLine);
        var lying = paper.Width >= paper.Height ? paper : new PaperSize(paper.Name, paper.Height, paper.Width);
        var upright = new PaperSize(lying.Name, lying.Height, lying.Width);
        return new[] { Cut(lying), Cut(upright) }.MinBy(g => g.Count)!;

        PieceGrid Cut(PaperSize p) => new(
            p, space, Pieces(space.Width, p.Width - (2 * Margin)), Pieces(space.Height, p.Height - (2 * Margin) - Head));
    }

    /// <summary>The window of one piece; pieces are of equal size and share their edges.</summary>
    public PaperBox Window(int column, int row)
    {
        double width = Space.Width / Across;
        double height = Space.Height / Down;
        return PaperBox.At(new(Space.Left + (column * width), Space.Top + (row * height)), width, height);
    }

    private static int Pieces(double length, double most) => Math.Max(1, (int)Math.Ceiling((length - 0.01) / most));
}
