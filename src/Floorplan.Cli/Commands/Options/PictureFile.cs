using System.CommandLine;
using System.CommandLine.Parsing;

namespace Floorplan.Cli.Commands.Options;

/// <summary>Options that name a picture to write: <c>--chart day.svg</c>; the end of the name says what kind it is.</summary>
internal static class PictureFile
{
    public static Option<string?> Build(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "OUT" };
        option.Validators.Add(result => Refuse(name, result));
        return option;
    }

    public static bool IsPng(string file) => file.EndsWith(".png", StringComparison.OrdinalIgnoreCase);

    private static bool IsSvg(string file) => file.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);

    private static void Refuse(string name, OptionResult result)
    {
        if (result.Tokens is [{ Value: var file }, ..] && !IsPng(file) && !IsSvg(file))
        {
            result.AddError($"{name}: '{file}' ends neither in .svg nor in .png");
        }
    }
}
