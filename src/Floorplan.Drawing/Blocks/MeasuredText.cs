using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Blocks;

/// <summary>A sheet's text as blocks, wrapped once for each column width that its layouts try. For one thread.</summary>
internal sealed class MeasuredText(SheetContent content, DrawingStandard standard)
{
    private readonly Dictionary<double, IReadOnlyList<TextBlock>> byWidth = [];

    public IReadOnlyList<TextBlock> For(double width)
    {
        if (!byWidth.TryGetValue(width, out var blocks))
        {
            byWidth[width] = blocks = [.. TextBlocks.Of(content, width, standard)];
        }

        return blocks;
    }
}
