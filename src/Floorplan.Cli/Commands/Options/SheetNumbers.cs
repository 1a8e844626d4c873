using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Floorplan.Drawing.Sheets;

namespace Floorplan.Cli.Commands.Options;

/// <summary>The <c>--sheets 1,2</c> option.</summary>
internal static class SheetNumbers
{
    private static IReadOnlyList<int> Known { get; } = [.. SheetSet.All.Select(s => s.Number)];

    public static Option<int[]?> Build()
    {
        var option = new Option<int[]?>("--sheets")
        {
            Description = $"Numbers of the sheets to draw, such as 1,2; all of {List(Known)} when left out.",
            HelpName = "NUMBERS",
            CustomParser = Parse,
        };
        option.CompletionSources.Add(_ => Known.Select(n => n.ToString(CultureInfo.InvariantCulture)));
        return option;
    }

    private static int[]? Parse(ArgumentResult result)
    {
        var numbers = new List<int>();
        foreach (string part in result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries)))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int number) || !Known.Contains(number))
            {
                result.AddError($"--sheets: there is no sheet '{part}'; the sheets are {List(Known)}");
                return null;
            }

            numbers.Add(number);
        }

        return [.. numbers.Distinct().Order()];
    }

    private static string List(IEnumerable<int> numbers) => string.Join(",", numbers);
}
