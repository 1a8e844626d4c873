using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Charts;

/// <summary>The axis under a chart of the day, with a fine line up from each time.</summary>
/// <param name="End">In ticks.</param>
internal sealed record TimeAxis(long End, double Left, double Right, DrawingStandard Standard)
{
    /// <summary>What it takes under the chart, with a row of words.</summary>
    public const double Height = 11;

    public const string Caption = "hours and minutes from the start of work";

    private const double Air = 6;

    public double X(long at) => Left + ((Right - Left) * at / End);

    /// <param name="words">Under the times, to say what they are.</param>
    public void Draw(SceneBuilder scene, double top, double foot, string words, string group)
    {
        double each = TextMeasure.Width(ClockText.Of(End), Standard.NoteHeight) + Air;
        foreach (long at in ChartTicks.Times(End, Right - Left, each))
        {
            scene.Line(new(X(at), top), new(X(at), foot), new Pen(Standard.Fine, Palette.HatchGrey), Layers.Chart, group, Band.Tint);
            scene.Line(new(X(at), foot), new(X(at), foot + 1.2), new Pen(Standard.Narrow), Layers.Chart, group);
            scene.Text(
                new TextItem(
                    ClockText.Of(at), new(X(at), foot + 2.6 + Standard.NoteHeight), Standard.NoteHeight, TextAnchor.Middle, Layers.Chart,
                    group));
        }

        scene.Line(new(Left, foot), new(Right, foot), new Pen(Standard.Narrow), Layers.Chart, group);
        scene.Text(
            new TextItem(
                SafeText.Fit(words, Right - Left, Standard.NoteHeight, false), new(Left, foot + 3 + (Standard.NoteHeight * 2.5)),
                Standard.NoteHeight, TextAnchor.Start, Layers.Chart, group));
    }
}
