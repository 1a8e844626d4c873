using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Sizing.Simulation.Charts;

namespace Floorplan.Drawing.Charts;

/// <summary>What the looks in a chart of lanes mean, in rows under it.</summary>
/// <param name="endOfWork">The line at the end of the hours asked for; null where there is none.</param>
internal sealed class LaneKey(IReadOnlyList<DayState> states, Pen? endOfWork, double width, DrawingStandard standard)
{
    /// <summary>Rows that the widest key takes on the narrowest paper, mm; own measurement.</summary>
    public const double Highest = 4 * RowHeight;

    private const double RowHeight = 5.4;
    private const double Sample = 8;
    private const double SampleHeight = 3.4;
    private const double AfterSample = 1.5;
    private const double AfterWords = 5;

    public double Height => RowHeight * (Places().Select(p => p.Row).DefaultIfEmpty(-1).Max() + 1);

    public void Draw(SceneBuilder scene, PaperPoint at, string group)
    {
        foreach (var (index, (x, row)) in Places().Index())
        {
            var box = PaperBox.At(new(at.X + x, at.Y + (row * RowHeight) + 1), Sample, SampleHeight);
            if (index == states.Count)
            {
                scene.Line(new(box.Centre.X, box.Top - 0.5), new(box.Centre.X, box.Bottom + 0.5), endOfWork!, Layers.Legend, group);
            }
            else
            {
                StateLook.Draw(
                    scene, [[new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)]],
                    states[index], group);
                scene.Rectangle(box, new Pen(standard.Fine, Palette.Grey), Layers.Legend, group);
            }

            scene.Text(
                new TextItem(
                    Words(index), new(box.Right + AfterSample, box.Centre.Y + (standard.NoteHeight / 2)), standard.NoteHeight,
                    TextAnchor.Start, Layers.Legend, group));
        }
    }

    private string Words(int index) => index == states.Count ? "end of the hours asked for" : StateLook.Words(states[index]);

    /// <summary>One after the other, in a new row where the width is used up.</summary>
    private IEnumerable<(double X, int Row)> Places()
    {
        double x = 0;
        int row = 0;
        for (int i = 0; i < states.Count + (endOfWork is null ? 0 : 1); i++)
        {
            double taken = Sample + AfterSample + TextMeasure.Width(Words(i), standard.NoteHeight);
            if (x > 0 && x + taken > width)
            {
                (x, row) = (0, row + 1);
            }

            yield return (x, row);
            x += taken + AfterWords;
        }
    }
}
