using CsvHelper;
using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Lettering;

namespace Floorplan.Drawing.Schedules;

/// <summary>
/// Writes a schedule as comma-separated UTF-8 text (RFC 4180) with the mark that spreadsheets know UTF-8 by. Text that one would
/// run as a formula is led by an apostrophe, which it takes for "this is text"; numbers are left alone. Same plan, same bytes.
/// </summary>
public static class CsvSchedule
{
    private const int LongestCell = 1000;

    private static readonly CsvWriterOptions Options = new()
    {
        WriteByteOrderMark = true,
        Injection = CsvInjection.Escape,
        TrueValue = "yes",
        FalseValue = "no",
    };

    public static byte[] Write(Schedule schedule)
    {
        using var held = new MemoryStream();
        using (var csv = CsvWriter.Create(held, Options, leaveOpen: true))
        {
            csv.WriteRecord([.. schedule.Columns]);
            foreach (var row in schedule.Rows)
            {
                foreach (object? cell in row)
                {
                    csv.WriteField(cell is string or Cell ? SafeText.Clean(cell.ToString()!, LongestCell) : cell);
                }

                csv.EndRecord();
            }
        }

        return held.ToArray();
    }
}
