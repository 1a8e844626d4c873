using System.CommandLine;
using System.CommandLine.Parsing;
using Floorplan.Cli.Output.Drawings;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Commands.Options;

/// <summary>The <c>--format svg,pdf</c> option.</summary>
internal static class DrawFormats
{
    private static readonly IReadOnlyList<string> Known = [.. Enum.GetNames<DrawFormat>().Select(n => n.ToLowerInvariant())];

    public static Option<DrawFormat[]> Build()
    {
        var option = new Option<DrawFormat[]>("--format")
        {
            Description = $"What to write, such as svg,pdf; any of {string.Join(",", Known)}.",
            HelpName = "FORMATS",
            CustomParser = Parse,
            DefaultValueFactory = _ => [DrawFormat.Svg],
        };
        option.CompletionSources.Add(_ => Known);
        return option;
    }

    private static DrawFormat[]? Parse(ArgumentResult result)
    {
        var formats = new List<DrawFormat>();
        foreach (string part in result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries)))
        {
            if (!Known.Contains(part.ToLowerInvariant()))
            {
                string near = NearNames.Hint(part, Known) is { } hint ? "; " + hint : "";
                result.AddError($"--format: there is no format '{part}'; the formats are {string.Join(",", Known)}{near}");
                return null;
            }

            formats.Add(Enum.Parse<DrawFormat>(part, ignoreCase: true));
        }

        return [.. formats.Distinct().Order()];
    }
}
