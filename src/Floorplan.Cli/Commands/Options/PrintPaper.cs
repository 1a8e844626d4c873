using System.CommandLine;
using System.CommandLine.Parsing;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Words;

namespace Floorplan.Cli.Commands.Options;

/// <summary>The <c>--print letter</c> option.</summary>
internal static class PrintPaper
{
    public static Option<PaperSize?> Build()
    {
        var option = new Option<PaperSize?>("--print")
        {
            Description = "Also write a pdf for a small printer: the set in pieces of this paper, such as letter or A4, at true scale.",
            HelpName = "PAPER",
            CustomParser = Parse,
        };
        option.CompletionSources.Add(_ => ["letter", "A4", "A3", "tabloid"]);
        return option;
    }

    private static PaperSize? Parse(ArgumentResult result)
    {
        string name = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (PaperSize.Find(name) is { } paper)
        {
            return paper;
        }

        string near = NearNames.Hint(name, Paper.Names) is { } hint ? "; " + hint : $"; sizes are {string.Join(", ", Paper.Names)}";
        result.AddError($"--print: '{name}' is not a paper size{near}");
        return null;
    }
}
