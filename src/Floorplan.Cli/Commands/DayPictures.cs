using Floorplan.Cli.Commands.Options;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Printing;
using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Moving;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets.TheDay;
using Floorplan.Drawing.Svg;
using Floorplan.Print.Png;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Motion;

namespace Floorplan.Cli.Commands;

/// <summary>Writes the pictures of a day that can be run, each whole or not at all.</summary>
internal sealed class DayPictures(Host host, Checked input, PlanFacts facts)
{
    private const long UsualStretch = Ticks.Hour;

    /// <returns>The exit code.</returns>
    public int Write(DayPictureOptions asked)
    {
        int exit = ExitCode.Fine;
        if (asked.Animate is { } file)
        {
            exit = asked.At is { } at ? Still(file, at) : Moving(file, asked);
        }

        return asked.Chart is { } chart && exit == ExitCode.Fine ? WriteScene(chart, DayPicture.Draw(facts)) : exit;
    }

    public int WriteScene(string file, SheetScene scene) => PictureFile.IsPng(file)
        ? WriteFile(file, path => WholeFile.Replace(path, PngWriter.Write(scene, PngWriter.DefaultDpi)))
        : WriteFile(file, path => WholeFile.Replace(path, SvgWriter.Write(scene)));

    private int Still(string file, long at)
    {
        var motion = DayMotion.Of(facts)!;
        return at > motion.End ? Late("--at", motion) : WriteScene(file, StillDay.Draw(facts, motion, at));
    }

    private int Moving(string file, DayPictureOptions asked)
    {
        var motion = DayMotion.Of(facts)!;
        long from = asked.From ?? 0;
        if (from >= motion.End)
        {
            return Late("--from", motion);
        }

        long to = Math.Min(asked.To ?? (from + UsualStretch), motion.End);
        string picture = MovingDay.Write(facts, motion, from, to, asked.Speed);
        return picture.Length > MovingDay.Largest
            ? Refusal.Tell(host, "so much happens in this stretch that no browser would play it: choose a shorter one with --from and --to")
            : WriteFile(file, path => WholeFile.Replace(path, picture));
    }

    private int Late(string option, DayMotion motion)
        => Refusal.Tell(host, $"{option} is after the end of the day: all is out at {ClockText.Of(motion.End)} from the start of work");

    private int WriteFile(string file, Func<string, string?> write)
    {
        string path = host.Full(file);
        if (input.UsedPaths.Append(input.Input.Path).Any(p => string.Equals(p, path, StringComparison.OrdinalIgnoreCase)))
        {
            return Refusal.Tell(host, $"{file}: this is a file that is read, so it is not written over");
        }

        if (write(path) is { } problem)
        {
            return Refusal.Tell(host, $"{file}: {problem}");
        }

        Page.OfOutput(host).Line($"wrote {file}");
        return ExitCode.Fine;
    }
}
