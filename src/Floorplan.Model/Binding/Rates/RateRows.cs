using System.Globalization;
using CsvHelper;
using Floorplan.Language.Text;
using Floorplan.Model.Rates;

namespace Floorplan.Model.Binding.Rates;

/// <summary>
/// Reads comma-separated rates: a head of <c>what, unit, low, high</c> or <c>what, unit, rate</c>, then a line for each. Lines that begin
/// with <c>#</c> are passed over. A line that is wrong is told and left out.
/// </summary>
internal sealed class RateRows(SourceText source, Reports reports)
{
    /// <summary>Own bounds, far above any price list of a small unit.</summary>
    private const int MostRows = 1000;

    /// <inheritdoc cref="MostRows"/>
    private const double MostAmount = 1e9;

    /// <inheritdoc cref="MostRows"/>
    private const int LongestCell = 80;

    private const string Head = "what, unit, low, high";
    private const string CurrencyRow = "currency";

    private static readonly CsvReaderOptions Options = new()
    {
        HasHeader = false,
        AllowLineBreaksInQuotes = false,
        TrackLineNumbers = true,
        TrimWhitespace = true,
        CommentPrefix = '#',
    };

    private readonly Dictionary<(string What, string Unit), Rate> rows = [];
    private string currency = "";

    public (string Currency, IReadOnlyList<Rate> Rows) Read()
    {
        try
        {
            using var csv = CsvReader.FromText(source.Content, Options);
            if (!csv.Read() || Columns.Of(Cells(csv)) is not { } columns)
            {
                reports.Error(
                    "rates-head", $"`{source.Path}` does not begin with the names of its columns", Line(1),
                    $"write `{Head}` as its first line");
                return ("", []);
            }

            while (csv.Read())
            {
                if (rows.Count >= MostRows)
                {
                    reports.Error(
                        "rates-row", $"a file of rates has at most {MostRows} lines", Line(csv.LineNumber), "keep only what is used");
                    break;
                }

                Take(Cells(csv), columns, Line(csv.LineNumber));
            }
        }
        catch (CsvFormatException e)
        {
            reports.Error(
                "rates-row", "the quotes or commas of this line do not fit", Line(e.LineNumber), $"write a line such as `{Sample}`");
        }

        return (currency, [.. rows.Values]);
    }

    private const string Sample = "wall lining, m2, 40, 60";

    private static string[] Cells(CsvReader csv) => [.. Enumerable.Range(0, csv.FieldCount).Select(i => csv.GetString(i).Trim())];

    private void Take(string[] cells, Columns columns, SourceSpan span)
    {
        if (cells.All(c => c.Length == 0))
        {
            return;
        }

        string what = Cell(cells, columns.What), unit = Cell(cells, columns.Unit);
        if (what.Length == 0 || cells.Any(c => c.Length > LongestCell || c.Any(char.IsControl)))
        {
            Wrong(what.Length == 0 ? "this line does not say what it is the rate of" : "this line has a text that is too long for a rate");
            return;
        }

        if (what.Equals(CurrencyRow, StringComparison.OrdinalIgnoreCase))
        {
            currency = unit;
            return;
        }

        if (Amount(Cell(cells, columns.Low)) is not { } low || Amount(Cell(cells, columns.High)) is not { } high)
        {
            Wrong($"the rate of {what} is no amount from 0 to {MostAmount:0}");
        }
        else if (high < low)
        {
            Wrong($"the high rate of {what} is below its low one");
        }
        else if (!rows.TryAdd((what.ToUpperInvariant(), unit.ToUpperInvariant()), new Rate(what, unit, low, high, span)))
        {
            reports.Error("rates-twice", $"the rate of {what} is given twice", span, "keep one of the lines");
        }

        void Wrong(string message) => reports.Error(
            "rates-row", message, span, $"write a line such as `{Sample}`, with a point in `4.5`");
    }

    private static string Cell(string[] cells, int column) => column < cells.Length ? cells[column] : "";

    private static double? Amount(string cell) =>
        double.TryParse(cell, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double amount) && amount <= MostAmount
            ? amount : null;

    private SourceSpan Line(long number)
    {
        int line = (int)Math.Clamp(number, 1, source.LineCount);
        string text = source.Line(line);
        return new SourceSpan(source, source.StartOf(line), text.Length);
    }

    /// <summary>Which column is which; a single rate is both low and high.</summary>
    private sealed record Columns(int What, int Unit, int Low, int High)
    {
        /// <summary>Null when one is missing.</summary>
        public static Columns? Of(string[] heads)
        {
            int At(string name) => Array.FindIndex(heads, h => h.Equals(name, StringComparison.OrdinalIgnoreCase));
            int low = At("low"), high = At("high"), rate = At("rate");
            var columns = new Columns(At("what"), At("unit"), low >= 0 ? low : rate, high >= 0 ? high : rate);
            return columns is { What: >= 0, Unit: >= 0, Low: >= 0, High: >= 0 } ? columns : null;
        }
    }
}
