using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels.Drawn;

/// <summary>Lines and arcs of a scene by place. What is drawn again on the same place, as routes are, counts once.</summary>
/// <param name="area">Where they are looked for.</param>
internal sealed class DrawnStrokes(PaperBox area)
{
    private readonly PaperIndex<DrawnLine> lines = new(area);
    private readonly PaperIndex<DrawnArc> arcs = new(area);
    private readonly HashSet<DrawnLine> seen = [];
    private readonly HashSet<(PaperPoint Centre, double Radius, double Start, double End, double Width)> seenArcs = [];

    public void AddOnce(PaperPoint from, PaperPoint to, double width)
    {
        var line = DrawnLine.Rounded(from, to, width);
        if (seen.Add(line))
        {
            lines.Add(PaperBox.Of(from, to), line);
        }
    }

    public void AddOnce(ArcItem arc)
    {
        if (seenArcs.Add((DrawnLine.Rounded(arc.Centre), Math.Round(arc.Radius, 2), arc.StartDegrees, arc.EndDegrees, arc.Pen.Width)))
        {
            arcs.Add(PaperBox.Around(arc.Centre, 2 * arc.Radius, 2 * arc.Radius), new DrawnArc(arc));
        }
    }

    public void Add(PaperPoint from, PaperPoint to, double width) =>
        lines.Add(PaperBox.Of(from, to), new DrawnLine(from, to, width / 2));

    /// <summary>Those whose box touches <paramref name="box"/>, arcs as chords. The list holds until the next search.</summary>
    public List<DrawnLine> Near(PaperBox box)
    {
        var near = lines.Near(box);
        foreach (var arc in arcs.Near(box))
        {
            foreach (var (around, chord) in arc.Chords)
            {
                if (around.Touches(box))
                {
                    near.Add(chord);
                }
            }
        }

        return near;
    }
}
