using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Schedules;

/// <summary>A table of a sheet as a schedule: a head over some rows becomes a cell of its own in each of them.</summary>
internal static class TableSchedule
{
    public static Schedule Of(string name, KeyTable table)
    {
        bool grouped = table.Rows.Any(IsHead);
        var rows = new List<IReadOnlyList<object?>>();
        string head = "";
        foreach (var row in table.Rows)
        {
            if (IsHead(row))
            {
                head = row[0].Text;
            }
            else
            {
                IEnumerable<object?> cells = row.Select(c => (object?)c);
                rows.Add(grouped ? [head, .. cells] : [.. cells]);
            }
        }

        return new Schedule(name, table.Title, grouped ? ["under", .. table.Columns.Select(Head)] : [.. table.Columns.Select(Head)], rows);

        bool IsHead(IReadOnlyList<Cell> row) => row.Count == 1 && table.Columns.Count > 1;
    }

    private static string Head(string column) => column.ToLowerInvariant();
}
