using System.CommandLine;
using Floorplan.Cli.Gallery;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Commands;

/// <summary>Draws the gallery again. For those who work on the program; not listed.</summary>
internal static class GalleryCommand
{
    public static Command Build(Host host)
    {
        var folder = new Argument<string>("DIR") { Description = "The gallery's folder; what an earlier run left there is replaced." };
        var command = new Command("gallery", "Draw the gallery: templates, classic mistakes, rule pages.") { folder };
        command.Hidden = true;
        command.SetAction(parsed => Run(host, parsed.GetValue(folder)!));
        return command;
    }

    private static int Run(Host host, string folder)
    {
        string full = host.Full(folder);
        string? problem = GalleryFiles.Refusal(full);
        if (problem is null)
        {
            var files = GalleryMaker.Make();
            problem = files.WriteTo(full);
            if (problem is null)
            {
                Page.OfOutput(host).Line($"wrote {files.Count} files to {folder}");
                return ExitCode.Fine;
            }
        }

        return Refusal.Tell(host, $"{folder}: {problem}");
    }
}
