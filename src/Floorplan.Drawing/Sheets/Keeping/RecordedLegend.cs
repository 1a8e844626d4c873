using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>A sample of the legend that notes where it is drawn and what it draws, as <see cref="RecordedView"/> does.</summary>
internal sealed class RecordedLegend
{
    private readonly List<(PaperBox Box, double Denominator, DrawnSoFar Start, DrawnSoFar End)> drawings = [];

    public RecordedLegend(LegendEntry entry)
    {
        Entry = entry with
        {
            Draw = (scene, box) =>
            {
                var start = new DrawnSoFar(scene, null);
                entry.Draw(scene, box);
                drawings.Add((box, scene.Denominator, start, new DrawnSoFar(scene, null)));
            },
        };
    }

    /// <summary>To be drawn instead of the one that it was made from.</summary>
    public LegendEntry Entry { get; }

    /// <summary>A sample is drawn on its own: it does not look at what else is on the sheet.</summary>
    public bool DrawsAs(LegendEntry other)
    {
        foreach (var (box, denominator, start, end) in drawings)
        {
            var scene = new SceneBuilder(denominator);
            var begun = new DrawnSoFar(scene, null);
            other.Draw(scene, box);
            if (!start.SameAdded(end, begun, new DrawnSoFar(scene, null), new FigurePairs()))
            {
                return false;
            }
        }

        return other.Text == Entry.Text;
    }
}
