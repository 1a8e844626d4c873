using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Frames;

/// <summary>A drawn scale, which survives photocopying where a ratio does not.</summary>
internal static class BarScale
{
    public const double Width = 90;

    private const double Thickness = 1.6;

    private static readonly double[] Steps = [1, 2, 5, 10, 20, 50, 100, 200, 500];

    public static void Draw(SceneBuilder scene, PaperPoint left, double denominator, UnitSystem units, DrawingStandard standard)
    {
        double unit = units == UnitSystem.Metric ? 1000 : InchPound.MillimetresPerFoot;
        double least = units == UnitSystem.Metric ? 0.1 : 1;
        double step = Steps.Select(s => s * least).LastOrDefault(s => s * unit / denominator * 4 <= Width - 15, least);
        int parts = Math.Clamp((int)((Width - 15) / (step * unit / denominator)), 1, 5);
        double each = step * unit / denominator;
        var pen = new Pen(standard.Narrow);
        for (int i = 0; i < parts; i++)
        {
            var box = PaperBox.At(left + new PaperPoint(i * each, 0), each, Thickness);
            if (i % 2 == 0)
            {
                scene.Fill(box, Palette.Black, Layers.Marks, "bar scale", Band.Annotation);
            }

            scene.Rectangle(box, pen, Layers.Marks, "bar scale", Band.Annotation);
        }

        for (int i = 0; i <= parts; i++)
        {
            string number = (i * step).ToString("0.#", CultureInfo.InvariantCulture);
            string text = i == parts ? $"{number} {QuantityText.DistanceUnit(units)}" : number;
            scene.Text(
                new TextItem(text, left + new PaperPoint(i * each, Thickness + 1 + standard.NoteHeight), standard.NoteHeight, i == parts
                    ? TextAnchor.Start
                    : TextAnchor.Middle, Layers.Marks, "bar scale"));
        }
    }
}
