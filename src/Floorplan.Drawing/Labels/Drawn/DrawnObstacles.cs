using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels.Drawn;

/// <summary>What labels keep clear of: texts, heavy lines and dark areas always, thin lines where possible.</summary>
internal sealed class DrawnObstacles
{
    /// <summary>Between two texts, so that they do not read as one.</summary>
    private const double TextGap = 0.5;

    /// <summary>Areas darker than this hide black text; tints are lighter.</summary>
    private const double DarkBelow = 0.75;

    private readonly double heavyFrom;
    private readonly PaperIndex<PaperBox> boxes;
    private readonly DrawnStrokes heavy;
    private readonly DrawnStrokes thin;
    private readonly DrawnStrokes leaders;
    private readonly PaperIndex<AreaItem> dark;
    private readonly HashSet<(PaperPoint, PaperPoint, int)> seenDark = [];

    /// <summary>What stood in the way of the last place; the next one is often a little beside it.</summary>
    private PaperBox blockingText = PaperBox.Nothing;
    private DrawnLine? blockingLine;

    /// <param name="area">Where labels may stand.</param>
    public DrawnObstacles(IEnumerable<SceneItem> items, double heavyFrom, PaperBox area)
    {
        this.heavyFrom = heavyFrom;
        (boxes, dark) = (new(area), new(area));
        (heavy, thin, leaders) = (new(area), new(area), new(area));
        foreach (var item in items)
        {
            switch (item)
            {
                case TextItem text:
                    AddText(TextMeasure.Box(text));
                    break;
                case LineItem line:
                    Strokes(line.Pen).AddOnce(line.From, line.To, line.Pen.Width);
                    break;
                case PolylineItem line:
                    for (int i = 1; i < line.Points.Count + (line.Closed ? 1 : 0); i++)
                    {
                        Strokes(line.Pen).AddOnce(line.Points[i - 1], line.Points[i % line.Points.Count], line.Pen.Width);
                    }

                    break;
                case ArcItem arc:
                    Strokes(arc.Pen).AddOnce(arc);
                    break;
                case AreaItem filled when Luminance(filled.Fill) < DarkBelow:
                    AddDark(filled);
                    break;
            }
        }
    }

    public void AddText(PaperBox box) => boxes.Add(box.Grown(TextGap / 2), box.Grown(TextGap / 2));

    public void AddKeepOut(PaperBox box) => boxes.Add(box, box);

    /// <summary>Leaders stay clear of later labels too.</summary>
    public void AddLeader(PaperPoint from, PaperPoint to)
    {
        AddHeavy(from, to, 0);
        leaders.Add(from, to, 0);
    }

    /// <param name="width">Paper mm.</param>
    public void AddHeavy(PaperPoint from, PaperPoint to, double width) => heavy.Add(from, to, width);

    /// <summary>No text, heavy line or dark area where this text would stand.</summary>
    public bool IsFree(PaperBox box)
    {
        var grown = box.Grown(TextGap / 2);
        if (blockingText.Overlaps(grown) || (blockingLine is { } last && IsCut(grown, last)))
        {
            return false;
        }

        foreach (var other in boxes.Near(grown))
        {
            if (other.Overlaps(grown))
            {
                blockingText = other;
                return false;
            }
        }

        foreach (var line in heavy.Near(grown.Grown(1)))
        {
            if (IsCut(grown, line))
            {
                blockingLine = line;
                return false;
            }
        }

        foreach (var area in dark.Near(grown))
        {
            if (RingShapes.Touches(area.Rings, grown))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>How many thin lines run through.</summary>
    public int ThinCuts(PaperBox box)
    {
        int count = 0;
        foreach (var line in thin.Near(box))
        {
            count += box.IsCutBy(line.From, line.To) ? 1 : 0;
        }

        return count;
    }

    /// <summary>How many lines of any weight a line would cross.</summary>
    public int Crossings(PaperPoint from, PaperPoint to) => Crossed(heavy, from, to) + Crossed(thin, from, to);

    public int LeadersCrossed(PaperPoint from, PaperPoint to) => Crossed(leaders, from, to);

    /// <summary>A leader may cross lines, but no text.</summary>
    public bool LeaderIsFree(PaperPoint from, PaperPoint to)
    {
        foreach (var box in boxes.Near(PaperBox.Of(from, to)))
        {
            if (box.IsCutBy(from, to))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsCut(PaperBox box, DrawnLine line) => box.Grown(line.HalfWidth).IsCutBy(line.From, line.To);

    private static int Crossed(DrawnStrokes strokes, PaperPoint from, PaperPoint to)
    {
        int count = 0;
        foreach (var line in strokes.Near(PaperBox.Of(from, to)))
        {
            count += line.Crosses(from, to) ? 1 : 0;
        }

        return count;
    }

    private DrawnStrokes Strokes(Pen pen) => pen.Width >= heavyFrom ? heavy : thin;

    /// <summary>Arrowheads of routes lie on each other too: areas of as many corners in the same box are taken for one.</summary>
    private void AddDark(AreaItem area)
    {
        var box = PaperBox.Of(area.Rings);
        var (topLeft, bottomRight) = (new PaperPoint(box.Left, box.Top), new PaperPoint(box.Right, box.Bottom));
        if (seenDark.Add((DrawnLine.Rounded(topLeft), DrawnLine.Rounded(bottomRight), area.Rings.Sum(r => r.Count))))
        {
            dark.Add(box, area);
        }
    }

    private static double Luminance(string colour)
    {
        int red = Convert.ToInt32(colour.Substring(1, 2), 16);
        int green = Convert.ToInt32(colour.Substring(3, 2), 16);
        int blue = Convert.ToInt32(colour.Substring(5, 2), 16);
        return ((0.2126 * red) + (0.7152 * green) + (0.0722 * blue)) / 255;
    }
}
