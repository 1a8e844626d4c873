using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Blocks;

/// <summary>The title over a block, with a line under it. A long one takes more lines.</summary>
internal static class BlockTitle
{
    /// <summary>From the foot of the letters to the line, in letter heights: the tails of g, p and y stand clear of it.</summary>
    private const double LineGap = 0.37;
    private const double Under = 1.7;

    public static BlockRow Of(string title, double width, DrawingStandard standard)
    {
        double height = TextMeasure.Width(title, standard.SubtitleHeight, true) <= width ? standard.SubtitleHeight : standard.NoteHeight;
        var lines = TextWrap.Lines(SafeText.Clean(title), width, height, true);
        double block = height * (1 + ((lines.Count - 1) * TextMeasure.LinePitch));
        double under = block + (LineGap * height);
        return new BlockRow(under + Under, (scene, at) =>
        {
            TextBlocks.Lines(scene, lines, at, standard with { NoteHeight = height }, Layers.Legend, bold: true);
            scene.Line(
                at + new PaperPoint(0, under), at + new PaperPoint(width, under), new Pen(standard.Narrow), Layers.Legend, null,
                Band.Annotation);
        });
    }
}
