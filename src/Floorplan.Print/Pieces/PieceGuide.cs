using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Print.Pieces;

/// <summary>The first page: how to print the pieces and how they go together.</summary>
internal static class PieceGuide
{
    private const double Indent = 15;
    private const double Pitch = 6;
    private const double Text = 3.5;

    public static PiecePage Of(PieceGrid grid, PaperSize sheet, int sheets)
    {
        var scene = new SceneBuilder();
        double y = Indent + 5;
        scene.Text(new TextItem("How the pieces go together", new(Indent, y), 5, TextAnchor.Start, Layers.Text, Bold: true));
        foreach (string line in Lines(grid, sheet, sheets))
        {
            y += Pitch;
            scene.Text(new TextItem(line, new(Indent, y), Text, TextAnchor.Start, Layers.Text));
        }

        Sketch(scene, grid, new(Indent, y + 10));
        return new PiecePage(
            null, default, default,
            new SheetScene(
                "pieces", "How the pieces go together", "How to print the pieces and join them.", grid.Paper.Width, grid.Paper.Height,
                [.. scene.Items]));
    }

    private static IEnumerable<string> Lines(PieceGrid grid, PaperSize sheet, int sheets) =>
    [
        FormattableString.Invariant($"{sheets} pages of {sheet.Name}, each in {grid.Count} pieces of {grid.Paper.Name}, at true scale."),
        "1  Print at 100 %, not fitted to the page.",
        "2  Measure the line over a piece. Does it differ? Print again.",
        "3  Cut each piece along the ticks at its corners.",
        "4  Lay the pieces of a page as drawn here: half circles become circles.",
        "5  Tape them from the back. Still: measure on site before cutting.",
    ];

    private static void Sketch(SceneBuilder scene, PieceGrid grid, PaperPoint at)
    {
        double scale =
            Math.Min((grid.Paper.Width - (2 * Indent)) / grid.Space.Width, (grid.Paper.Height - at.Y - Indent) / grid.Space.Height);
        for (int i = 0; i < grid.Count; i++)
        {
            var window = grid.Window(i % grid.Across, i / grid.Across);
            var corner = at + new PaperPoint((window.Left - grid.Space.Left) * scale, (window.Top - grid.Space.Top) * scale);
            var box = PaperBox.At(corner, window.Width * scale, window.Height * scale);
            scene.Rectangle(box, new Pen(0.35), Layers.Marks);
            scene.Text(
                new TextItem(
                    FormattableString.Invariant($"{i + 1}"), box.Centre + new PaperPoint(0, 5), 10, TextAnchor.Middle, Layers.Text,
                    Bold: true));
        }
    }
}
