using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Pages;

/// <summary>The text of a sheet as blocks for columns of a width, each worked out once.</summary>
internal sealed class BlockMeasures(SheetContent content)
{
    private readonly Dictionary<double, IReadOnlyList<MeasuredTable>> tables = [];
    private readonly Dictionary<(double Width, double Height), IReadOnlyList<ColumnBlock>> blocks = [];

    public IReadOnlyList<ColumnBlock> Of(double width, DrawingStandard text)
    {
        if (!blocks.TryGetValue((width, text.NoteHeight), out var known))
        {
            var all = TextBlocks.Of(content, Tables(text), width, text).ToList();
            var revisions = TextBlocks.Revisions(content);
            if (revisions.Rows.Count > 0)
            {
                all.Add(new MeasuredTable(revisions, text).At(width));
            }

            blocks[(width, text.NoteHeight)] = known = [.. all.Select(b => new ColumnBlock(b, width, text))];
        }

        return known;
    }

    private IReadOnlyList<MeasuredTable> Tables(DrawingStandard text)
    {
        if (!tables.TryGetValue(text.NoteHeight, out var known))
        {
            tables[text.NoteHeight] = known = [.. content.Tables.Where(t => t.Rows.Count > 0).Select(t => new MeasuredTable(t, text))];
        }

        return known;
    }
}
