using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>
/// A view that notes what it is asked while its sheet is composed, and what it answers. A view that would answer all the same makes the
/// same sheet, since composing knows nothing else of it.
/// </summary>
internal sealed class RecordedView(ISheetView view) : ISheetView
{
    private readonly Dictionary<double, PaperSpace> measured = [];
    private readonly List<Drawing> drawings = [];

    public string Title => view.Title;

    public bool IsPlan => view.IsPlan;

    public bool HasScale => view.HasScale;

    public double Density => view.Density;

    public PaperSpace Measure(double denominator)
    {
        if (!measured.TryGetValue(denominator, out var space))
        {
            measured[denominator] = space = view.Measure(denominator);
        }

        return space;
    }

    public void Draw(ViewCanvas canvas)
    {
        var start = new DrawnSoFar(canvas.Scene, canvas.Labels);
        view.Draw(canvas);
        drawings.Add(new Drawing(canvas, start, new DrawnSoFar(canvas.Scene, canvas.Labels)));
    }

    /// <summary>Whether another view gives the same answers to all that this one was asked.</summary>
    public bool AnswersAs(ISheetView other, FigurePairs figures)
    {
        if ((other.Title, other.IsPlan, other.HasScale, other.Density) != (Title, IsPlan, HasScale, Density)
            || measured.Any(m => other.Measure(m.Key) != m.Value))
        {
            return false;
        }

        foreach (var (canvas, start, end) in drawings)
        {
            var (scene, labels) = start.Again();
            var begun = new DrawnSoFar(scene, labels);
            other.Draw(canvas with { Scene = scene, Labels = labels });
            if (!start.SameAdded(end, begun, new DrawnSoFar(scene, labels), figures))
            {
                return false;
            }
        }

        return true;
    }

    private sealed record Drawing(ViewCanvas Canvas, DrawnSoFar Start, DrawnSoFar End);
}
