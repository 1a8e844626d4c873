using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Drawing.Charts;

/// <summary>
/// What people or stations were at through the day, a lane each. Each slot of time is a bar of stacked shares: single jobs are seconds long
/// and would be lines thinner than ink, and an average of the whole day would not show when it gets busy.
/// </summary>
/// <param name="names">Of the lanes, as printed.</param>
/// <param name="states">From the foot of a bar up.</param>
/// <param name="nameWidth">What names take, mm: the same for all lanes of a page, so that times stand under each other.</param>
/// <param name="width">On paper, mm.</param>
internal sealed class LaneChart(
    string title, DayInTime day, IReadOnlyList<DayLane> lanes, IReadOnlyList<string> names, IReadOnlyList<DayState> states,
    long work, double nameWidth, double width, DrawingStandard standard) : ISheetView
{
    private const double LaneHeight = 8;
    private const double Gap = 1.6;
    private const double GroupGap = 2.4;
    private const double WidestName = 46;
    private const double AfterName = 2;

    public string Title => title;

    public bool IsPlan => false;

    public bool HasScale => false;

    public double Density => 0.95;

    /// <summary>It stands in the chart, since a chart that is read on one page and explained on another is of no use.</summary>
    private LaneKey Key => new(
        [.. states.Where(s => lanes.Any(l => l.Sum(s) > 0))], HasEndOfWork ? EndOfWork : null, width - nameWidth - AfterName, standard);

    /// <summary>Only where there is work for more than a slot after it.</summary>
    private bool HasEndOfWork => work + day.Slot < day.End;

    private Pen EndOfWork => new(standard.Text, Dash: [2, 1]);

    /// <summary>Lanes that fit a height go into one chart, the others into further charts.</summary>
    public static IEnumerable<(int From, int Count)> Parts(
        IReadOnlyList<string> names, double height, DrawingStandard standard)
    {
        int from = 0;
        const double under = TimeAxis.Height + LaneKey.Highest;
        double taken = under;
        for (int i = 0; i < names.Count; i++)
        {
            double lane = HeightOf(Lines(names[i], standard), standard) + Gap + GroupGap;
            if (i > from && taken + lane > height)
            {
                yield return (from, i - from);
                (from, taken) = (i, under);
            }

            taken += lane;
        }

        if (names.Count > from)
        {
            yield return (from, names.Count - from);
        }
    }

    public PaperSpace Measure(double denominator) => new(width, Tops().Foot + TimeAxis.Height + Key.Height);

    public void Draw(ViewCanvas canvas)
    {
        var scene = canvas.Scene;
        double left = canvas.Box.Left + nameWidth + AfterName;
        double lastTime = TextMeasure.Width(ClockText.Of(day.End), standard.NoteHeight);
        var axis = new TimeAxis(day.End, left, canvas.Box.Right - (lastTime / 2), standard);
        var (tops, foot) = Tops();
        axis.Draw(
            scene, canvas.Box.Top, canvas.Box.Top + foot,
            $"{TimeAxis.Caption}; a bar is {QuantityText.Time(Ticks.Seconds(day.Slot))}, and its parts are shares of that time", title);
        Key.Draw(scene, new(left, canvas.Box.Top + foot + TimeAxis.Height), title);
        double[] x = [.. Enumerable.Range(0, day.People.Concat(day.Stations).Max(l => l.Slots.Count) + 1)
            .Select(s => axis.X(Math.Min(day.End, s * day.Slot)))];
        for (int i = 0; i < lanes.Count; i++)
        {
            Lane(scene, lanes[i], names[i], canvas.Box.Top + tops[i], canvas.Box.Left, x);
        }

        if (HasEndOfWork)
        {
            scene.Line(
                new(axis.X(work), canvas.Box.Top), new(axis.X(work), canvas.Box.Top + foot), EndOfWork, Layers.Chart, title,
                Band.Annotation);
        }
    }

    private void Lane(SceneBuilder scene, DayLane lane, string name, double top, double left, double[] x)
    {
        var lines = Lines(name, standard);
        double height = HeightOf(lines, standard);
        double block = TextMeasure.BlockHeight(lines.Count, standard.NoteHeight);
        double first = top + ((height - block) / 2) + (standard.NoteHeight * TextMeasure.Ascent);
        for (int i = 0; i < lines.Count; i++)
        {
            scene.Text(
                new TextItem(
                    lines[i], new(left, first + (i * standard.NoteHeight * TextMeasure.LinePitch)), standard.NoteHeight,
                    TextAnchor.Start, Layers.Chart, "lane:" + lane.Name));
        }

        double foot = top + height;
        for (int s = 0; s < states.Count; s++)
        {
            if (!StateLook.IsBlank(states[s])
                && LaneBands.Of(lane, states[s], [.. states.Take(s)], x, foot, height) is { Count: > 0 } rings)
            {
                StateLook.Draw(scene, rings, states[s], "lane:" + lane.Name);
            }
        }

        scene.Rectangle(
            new PaperBox(x[0], top, x[lane.Slots.Count], foot), new Pen(standard.Fine, Palette.Grey), Layers.Chart, "lane:" + lane.Name);
    }

    public static double NameWidth(IEnumerable<string> names, DrawingStandard standard)
        => names.SelectMany(n => Lines(n, standard)).Select(l => TextMeasure.Width(l, standard.NoteHeight)).DefaultIfEmpty(0).Max();

    private static IReadOnlyList<string> Lines(string name, DrawingStandard standard)
        => TextWrap.Lines(SafeText.Clean(name), WidestName, standard.NoteHeight);

    private static double HeightOf(IReadOnlyList<string> lines, DrawingStandard standard)
        => Math.Max(LaneHeight, TextMeasure.BlockHeight(lines.Count, standard.NoteHeight) + 1);

    private (IReadOnlyList<double> Tops, double Foot) Tops()
    {
        var tops = new List<double>();
        double y = Gap;
        for (int i = 0; i < lanes.Count; i++)
        {
            y += i > 0 && lanes[i].Group != lanes[i - 1].Group ? GroupGap : 0;
            tops.Add(y);
            y += HeightOf(Lines(names[i], standard), standard) + Gap;
        }

        return (tops, y);
    }
}
