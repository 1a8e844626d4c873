using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Lettering;

/// <summary>How much paper a line of text takes. All in paper millimetres.</summary>
public static class TextMeasure
{
    /// <summary>Capital height over font size of Inter, about 0.727.</summary>
    public const double CapHeightRatio = InterAdvances.CapHeight / (double)InterAdvances.UnitsPerEm;

    /// <summary>Below the baseline, in cap heights: tails of g, p, q and commas (0.29 in Inter).</summary>
    public const double Descent = 0.3;

    /// <summary>Above the baseline, in cap heights: ascenders and accents on small letters.</summary>
    public const double Ascent = 1.1;

    /// <summary>Baseline to baseline, in cap heights (ISO 3098, capitals and small letters).</summary>
    public const double LinePitch = 1.5;

    /// <summary>The font size that gives capitals of this height.</summary>
    public static double FontSize(double capHeight) => capHeight / CapHeightRatio;

    /// <summary>
    /// Width of one line in the widest of the typefaces that people have: Inter, which sheets ask for, Arial or its like, or DejaVu Sans.
    /// </summary>
    public static double Width(string text, double capHeight, bool bold = false)
    {
        var width = new RunningWidth(capHeight, bold);
        foreach (var rune in text.EnumerateRunes())
        {
            width.Add(rune);
        }

        return width.Width;
    }

    /// <summary>Width of one line in Inter alone.</summary>
    public static double WidthInInter(string text, double capHeight, bool bold = false)
        => text.EnumerateRunes().Sum(rune => (long)InterAdvances.Of(rune.Value, bold)) * capHeight / InterAdvances.CapHeight;

    /// <summary>Height of a block of lines from the top of its capitals to the foot of its tails.</summary>
    public static double BlockHeight(int lines, double capHeight)
        => lines == 0 ? 0 : capHeight * (Ascent + Descent + ((lines - 1) * LinePitch));

    /// <summary>The box that a text item takes; for turned text the upright box around it.</summary>
    public static PaperBox Box(TextItem text)
    {
        double width = Width(text.Text, text.CapHeight, text.Bold);
        double left = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => -width / 2, _ => -width };
        double top = -text.CapHeight * Ascent;
        double bottom = text.CapHeight * Descent;
        var (sin, cos) = SinCos(text.Degrees);
        var box = PaperBox.Nothing;
        foreach (var (x, y) in new[] { (left, top), (left + width, top), (left, bottom), (left + width, bottom) })
        {
            // Counter-clockwise on paper whose y points down.
            box = box.With(new PaperPoint(text.At.X + (x * cos) + (y * sin), text.At.Y - (x * sin) + (y * cos)));
        }

        return box;
    }

    private static (double Sin, double Cos) SinCos(double degrees) => degrees switch
    {
        0 => (0, 1),
        90 => (1, 0),
        _ => Math.SinCos(degrees * Math.PI / 180),
    };
}
