using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Pages;

/// <summary>The text of a sheet as blocks for columns of a width, each worked out once.</summary>
internal sealed class BlockMeasures(SheetContent content)
{
    private readonly Dictionary<double, (IReadOnlyList<MeasuredTable> Tables, IReadOnlyList<MeasuredTable> Revisions)> tables = [];
    private readonly Dictionary<(double Width, double Height), IReadOnlyList<ColumnBlock>> blocks = [];

    public IReadOnlyList<ColumnBlock> Of(double width, DrawingStandard text)
    {
        if (!blocks.TryGetValue((width, text.NoteHeight), out var known))
        {
            var (measured, revisions) = Tables(text);
            var all = TextBlocks.Of(content, measured, width, text).Concat(revisions.Select(r => r.At(width)));
            blocks[(width, text.NoteHeight)] = known = [.. all.Select(b => new ColumnBlock(b, width, text))];
        }

        return known;
    }

    /// <summary>Those of the sheet, and that of its revisions, which comes last; none of them is empty.</summary>
    private (IReadOnlyList<MeasuredTable> Tables, IReadOnlyList<MeasuredTable> Revisions) Tables(DrawingStandard text)
    {
        if (!tables.TryGetValue(text.NoteHeight, out var known))
        {
            tables[text.NoteHeight] = known = (Measured(content.Tables, text), Measured([TextBlocks.Revisions(content)], text));
        }

        return known;
    }

    private static IReadOnlyList<MeasuredTable> Measured(IEnumerable<KeyTable> tables, DrawingStandard text)
        => [.. tables.Where(t => t.Rows.Count > 0).Select(t => new MeasuredTable(t, text))];
}
