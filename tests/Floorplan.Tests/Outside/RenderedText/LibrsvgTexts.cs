using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;
using Floorplan.Tests.Cli;
using NetTopologySuite.Geometries;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Floorplan.Tests.Outside.RenderedText;

/// <summary>
/// What each text of some pages takes in librsvg, which has nothing to ask: so each text is drawn by <see cref="SvgWriter"/> in a row by
/// itself, and the ink of its row is looked at. Colours on the page itself would blend where texts touch, and a text that is drawn alone
/// needs no telling apart. Texts of one wording, weight and anchor are drawn once, those of like width together: then all texts of all
/// templates are a few pictures.
/// </summary>
internal sealed class LibrsvgTexts
{
    private const double CapHeight = 2.5;
    private const int PixelsPerMm = 8;

    /// <summary>Room for tails, accents and what is wider than promised, mm.</summary>
    private const int RowHeight = 5;
    private const int Baseline = 4;
    private const int Beside = 5;

    /// <summary>Pictures of more than 32 767 pixels are not drawn.</summary>
    private const int MostRows = 400;

    /// <summary>Between ink and paper.</summary>
    private const byte Ink = 128;

    private readonly Dictionary<Wording, Rectangle> inks = [];

    /// <param name="texts">All that will be asked for.</param>
    public LibrsvgTexts(Typeface typeface, IEnumerable<TextItem> texts, TemporaryFolder folder)
    {
        var renderers = new Renderers(typeface.Install(folder));
        foreach (var rows in texts.Select(Wording.Of).Distinct().OrderBy(w => w.Width).ThenBy(w => w.Text, StringComparer.Ordinal)
            .Chunk(MostRows))
        {
            int width = (int)Math.Ceiling(rows[^1].Width) + (2 * Beside);
            string svg = folder.Write("rows.svg", SvgWriter.Write(new SheetScene(
                "rows", "Rows", "", width, rows.Length * RowHeight, [.. rows.Select((r, i) => r.In(width, i))], 1)));
            renderers.Librsvg(svg, svg + ".png", width * PixelsPerMm, rows.Length * RowHeight * PixelsPerMm);
            using var picture = Image.Load<L8>(svg + ".png");
            byte[] pixels = new byte[picture.Width * picture.Height];
            picture.CopyPixelDataTo(pixels);
            int rowPixels = RowHeight * PixelsPerMm * picture.Width;
            foreach (var (i, row) in rows.Index())
            {
                inks[row] = InkOf(pixels.AsSpan(i * rowPixels, rowPixels), picture.Width, row.AnchorIn(width));
            }
        }
    }

    /// <summary>In mm on the paper; empty where a text has no ink.</summary>
    public Geometry Box(TextItem text)
    {
        var ink = inks[Wording.Of(text)];
        double size = text.CapHeight / CapHeight;
        var (sin, cos) = Math.SinCos(text.Degrees * Math.PI / 180);
        return new Polygon(new LinearRing(
        [
            At(ink.Left, ink.Top), At(ink.Right, ink.Top), At(ink.Right, ink.Bottom), At(ink.Left, ink.Bottom), At(ink.Left, ink.Top),
        ]));

        // Counter-clockwise on paper whose y points down.
        Coordinate At(double x, double y)
            => new(text.At.X + (size * ((x * cos) + (y * sin))), text.At.Y + (size * ((y * cos) - (x * sin))));
    }

    private static Rectangle InkOf(ReadOnlySpan<byte> row, int width, double anchor)
    {
        int left = width, right = -1, top = RowHeight * PixelsPerMm, bottom = -1;
        for (int y = 0; y < row.Length / width; y++)
        {
            var line = row.Slice(y * width, width);
            if (line.IndexOfAnyInRange((byte)0, Ink) is >= 0 and var first)
            {
                (left, right) = (Math.Min(left, first), Math.Max(right, line.LastIndexOfAnyInRange((byte)0, Ink)));
                (top, bottom) = (Math.Min(top, y), y);
            }
        }

        if (left == 0 || right == width - 1 || top == 0 || bottom == (RowHeight * PixelsPerMm) - 1)
        {
            throw new InvalidOperationException("a text reaches out of its row");
        }

        return right < 0 ? default : new Rectangle(
            Mm(left) - anchor, Mm(top) - Baseline, Mm(right + 1) - anchor, Mm(bottom + 1) - Baseline);
    }

    private static double Mm(int pixels) => pixels / (double)PixelsPerMm;

    private sealed record Wording(string Text, bool Bold, TextAnchor Anchor)
    {
        public double Width { get; } = TextMeasure.Width(Text, CapHeight, Bold);

        public static Wording Of(TextItem text) => new(text.Text, text.Bold, text.Anchor);

        public TextItem In(double width, int row)
            => new(Text, new(AnchorIn(width), (row * RowHeight) + Baseline), CapHeight, Anchor, "rows", Bold: Bold);

        public double AnchorIn(double width)
            => Anchor switch { TextAnchor.Start => Beside, TextAnchor.Middle => width / 2, _ => width - Beside };
    }

    /// <summary>From the anchor, mm.</summary>
    private readonly record struct Rectangle(double Left, double Top, double Right, double Bottom);
}
