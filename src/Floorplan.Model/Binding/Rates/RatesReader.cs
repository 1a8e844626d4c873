using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Rates;

namespace Floorplan.Model.Binding.Rates;

/// <summary>Opens the file that <c>rates "our rates.csv"</c> names: in the plan's folder or below it, as <c>kinds from</c> does.</summary>
internal sealed class RatesReader(IPlanFiles files, Reports reports)
{
    private const string Extension = ".csv";

    /// <summary>A list of prices is some kilobytes; own bound.</summary>
    private const int MostCharacters = 200_000;

    /// <summary>Null when the plan names none, or it cannot be opened.</summary>
    public RateList? Read(TextSyntax? name, SourceText plan)
    {
        if (name is null)
        {
            return null;
        }

        if (!name.Text.EndsWith(Extension, StringComparison.OrdinalIgnoreCase))
        {
            NotRead(
                $"`{name.Text}` is not named as a table of rates", "name a file that ends in `.csv`, such as `rates \"our rates.csv\"`");
            return null;
        }

        var file = files.Read(plan, name.Text);
        if (file.Source is not { } source)
        {
            bool isNear = file.Help?.StartsWith("did you mean", StringComparison.Ordinal) == true;
            NotRead(file.Problem, isNear ? file.Help! : "put the file into the plan's folder and write such as `rates \"our rates.csv\"`");
            return null;
        }

        if (source.Content.Length > MostCharacters)
        {
            NotRead(
                $"`{name.Text}` is longer than {MostCharacters / 1000} thousand characters", "keep only the rates in it, a line for each");
            return null;
        }

        var (currency, rows) = new RateRows(source, reports).Read();
        return new RateList(name.Text, currency, rows, name.Span);

        void NotRead(string problem, string help) => reports.Error("rates-not-read", problem, name.Span, help);
    }
}
