using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Floorplan.Print.Png;

namespace Floorplan.Cli.Commands.Options;

/// <summary>The <c>--dpi 150</c> option.</summary>
internal static class Dpi
{
    public static Option<int> Build() => new("--dpi")
    {
        Description = $"How fine png pictures are, in dots to the inch, {PngWriter.LeastDpi} to {PngWriter.MostDpi}.",
        HelpName = "N",
        CustomParser = Parse,
        DefaultValueFactory = _ => PngWriter.DefaultDpi,
    };

    private static int Parse(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int dpi)
            && dpi is >= PngWriter.LeastDpi and <= PngWriter.MostDpi)
        {
            return dpi;
        }

        result.AddError($"--dpi: '{text}' is not a whole number from {PngWriter.LeastDpi} to {PngWriter.MostDpi}");
        return PngWriter.DefaultDpi;
    }
}
