using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>What labels keep clear of: texts, heavy lines and dark areas always, thin lines where possible.</summary>
internal sealed class DrawnObstacles
{
    /// <summary>Between two texts, so that they do not read as one.</summary>
    private const double TextGap = 0.5;

    /// <summary>Areas darker than this hide black text; tints are lighter.</summary>
    private const double DarkBelow = 0.75;

    /// <summary>An arc is looked at as this many chords a full turn.</summary>
    private const int ChordsPerTurn = 32;

    private readonly PaperIndex<PaperBox> boxes = new();
    private readonly PaperIndex<Segment> heavy = new();
    private readonly PaperIndex<Segment> thin = new();
    private readonly PaperIndex<Segment> leaders = new();
    private readonly PaperIndex<AreaItem> dark = new();
    private readonly HashSet<Segment> seen = [];
    private readonly HashSet<(PaperPoint, PaperPoint, int)> seenDark = [];

    public DrawnObstacles(IEnumerable<SceneItem> items, double heavyFrom)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case TextItem text:
                    AddText(TextMeasure.Box(text));
                    break;
                case LineItem line:
                    AddLine(line.From, line.To, line.Pen, heavyFrom);
                    break;
                case PolylineItem line:
                    for (int i = 1; i < line.Points.Count + (line.Closed ? 1 : 0); i++)
                    {
                        AddLine(line.Points[i - 1], line.Points[i % line.Points.Count], line.Pen, heavyFrom);
                    }

                    break;
                case ArcItem arc:
                    AddArc(arc, heavyFrom);
                    break;
                case AreaItem area when Luminance(area.Fill) < DarkBelow:
                    AddDark(area);
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
        leaders.Add(PaperBox.Of([from, to]), new Segment(from, to, 0));
    }

    /// <param name="width">Paper mm.</param>
    public void AddHeavy(PaperPoint from, PaperPoint to, double width)
        => heavy.Add(PaperBox.Of([from, to]), new Segment(from, to, width / 2));

    /// <summary>No text, heavy line or dark area where this text would stand.</summary>
    public bool IsFree(PaperBox box)
    {
        var grown = box.Grown(TextGap / 2);
        return !boxes.Any(grown, b => b.Overlaps(grown))
            && !heavy.Any(grown.Grown(1), s => grown.Grown(s.HalfWidth).IsCutBy(s.From, s.To))
            && !dark.Any(grown, a => Touches(a, grown));
    }

    /// <summary>How many thin lines run through.</summary>
    public int ThinCuts(PaperBox box) => thin.Count(box, s => box.IsCutBy(s.From, s.To));

    /// <summary>How many lines of any weight a line would cross.</summary>
    public int Crossings(PaperPoint from, PaperPoint to)
    {
        var box = PaperBox.Of([from, to]);
        return heavy.Count(box, s => Crosses(s, from, to)) + thin.Count(box, s => Crosses(s, from, to));
    }

    public int LeadersCrossed(PaperPoint from, PaperPoint to) => leaders.Count(PaperBox.Of([from, to]), s => Crosses(s, from, to));

    /// <summary>A leader may cross lines, but no text.</summary>
    public bool LeaderIsFree(PaperPoint from, PaperPoint to) => !boxes.Any(PaperBox.Of([from, to]), b => b.IsCutBy(from, to));

    private void AddLine(PaperPoint from, PaperPoint to, Pen pen, double heavyFrom)
    {
        // Routes walked again and again lie on each other.
        var segment = new Segment(Rounded(from), Rounded(to), pen.Width / 2);
        if (!seen.Add(segment))
        {
            return;
        }

        (pen.Width >= heavyFrom ? heavy : thin).Add(PaperBox.Of([from, to]), segment);
    }

    /// <summary>Arrowheads of such routes too: areas of as many corners in the same box are taken for one.</summary>
    private void AddDark(AreaItem area)
    {
        var box = PaperBox.Of(area.Rings.SelectMany(r => r));
        if (seenDark.Add((Rounded(new(box.Left, box.Top)), Rounded(new(box.Right, box.Bottom)), area.Rings.Sum(r => r.Count))))
        {
            dark.Add(box, area);
        }
    }

    private static PaperPoint Rounded(PaperPoint p) => new(Math.Round(p.X, 2), Math.Round(p.Y, 2));

    private void AddArc(ArcItem arc, double heavyFrom)
    {
        int chords = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.EndDegrees - arc.StartDegrees) / 360 * ChordsPerTurn));
        PaperPoint At(int i)
        {
            var (sin, cos) = Math.SinCos((arc.StartDegrees + ((arc.EndDegrees - arc.StartDegrees) * i / chords)) * Math.PI / 180);
            return new PaperPoint(arc.Centre.X + (arc.Radius * cos), arc.Centre.Y - (arc.Radius * sin));
        }

        for (int i = 0; i < chords; i++)
        {
            AddLine(At(i), At(i + 1), arc.Pen, heavyFrom);
        }
    }

    private static bool Crosses(Segment s, PaperPoint from, PaperPoint to) =>
        Side(from, to, s.From) * Side(from, to, s.To) < 0 && Side(s.From, s.To, from) * Side(s.From, s.To, to) < 0;

    private static int Side(PaperPoint a, PaperPoint b, PaperPoint p)
        => Math.Sign(((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X)));

    private static bool Touches(AreaItem area, PaperBox box)
    {
        bool inside = false;
        foreach (var ring in area.Rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                var a = ring[i];
                var b = ring[(i + 1) % ring.Count];
                if (box.IsCutBy(a, b))
                {
                    return true;
                }

                var c = box.Centre;
                inside ^= (a.Y > c.Y) != (b.Y > c.Y) && c.X < a.X + ((c.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
            }
        }

        return inside;
    }

    private static double Luminance(string colour)
    {
        int red = Convert.ToInt32(colour.Substring(1, 2), 16);
        int green = Convert.ToInt32(colour.Substring(3, 2), 16);
        int blue = Convert.ToInt32(colour.Substring(5, 2), 16);
        return ((0.2126 * red) + (0.7152 * green) + (0.0722 * blue)) / 255;
    }

    private readonly record struct Segment(PaperPoint From, PaperPoint To, double HalfWidth);
}
