using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Drawing.Sheets;

/// <summary>A schedule of the sizes as a table of a sheet.</summary>
internal static class SizedTable
{
    /// <summary>One for each schedule; those without a row are left out.</summary>
    public static IEnumerable<KeyTable> Of(SizedSubject? subject)
        => (subject?.Tables ?? []).Where(t => t.Rows.Count > 0).Select(t => new KeyTable(
            t.Title, t.Heads, [.. t.Rows.Select(r => (IReadOnlyList<Cell>)[.. r.Select(c => (Cell)c)])]));
}
