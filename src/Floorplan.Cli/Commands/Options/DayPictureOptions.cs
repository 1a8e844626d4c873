using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Floorplan.Cli.Commands.Options;

/// <summary>What pictures of the day are asked for.</summary>
/// <param name="Animate">The file of a picture that moves, or with <paramref name="At"/> of a still one; null for none.</param>
/// <param name="Chart">The file of a chart; null for none.</param>
/// <param name="At">In ticks from the start of work, as are the others.</param>
/// <param name="Speed">So many seconds of the day in one.</param>
internal sealed record DayPictureOptions(string? Animate, string? Chart, long? At, long? From, long? To, double Speed)
{
    /// <summary>A minute of the day in a second; own choice.</summary>
    private const double UsualSpeed = 60;
    private const double MostSpeed = 3600;

    public bool IsAsked => Animate is not null || Chart is not null;

    /// <summary>The options, and what reads them.</summary>
    public static (IReadOnlyList<Option> Options, Func<ParseResult, DayPictureOptions> Read) Build()
    {
        var animate = PictureFile.Build(
            "--animate", "Write a picture of the plan with people and loads on their ways, which plays in a browser (svg).");
        var chart = PictureFile.Build("--chart", "Write the day as a chart, or with --vary the pace by the figures (svg or png).");
        var at = DayTime.Build("--at", "With --animate: a still picture of this moment, from the start of work (svg or png).");
        var from = DayTime.Build("--from", "With --animate: where it begins, from the start of work; 0:00 when left out.");
        var to = DayTime.Build("--to", "With --animate: where it ends; an hour after --from when left out.");
        var speed = new Option<double>("--speed")
        {
            Description = "With --animate: so many seconds of the day go by in one.",
            HelpName = "N",
            DefaultValueFactory = _ => UsualSpeed,
            CustomParser = Speeds,
        };
        return (
            [animate, at, from, to, speed, chart],
            parsed => new DayPictureOptions(
                parsed.GetValue(animate), parsed.GetValue(chart), parsed.GetValue(at), parsed.GetValue(from), parsed.GetValue(to),
                parsed.GetValue(speed)));
    }

    /// <summary>What does not go together, as a sentence; null when all does.</summary>
    public string? Problem() => this switch
    {
        { Animate: null } when At is not null || From is not null || To is not null
            => "--at, --from and --to are of a picture: say where to write it with --animate day.svg",
        { At: not null } when From is not null || To is not null => "--at is one moment and --from and --to are a stretch: say one of both",
        { Animate: { } file, At: null } when PictureFile.IsPng(file)
            => "a png stands still: say which moment with --at 1:40, or write an svg",
        { From: var from, To: { } to } when to <= (from ?? 0) => "--to is not later than --from",
        _ => null,
    };

    private static double Speeds(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double speed)
            && speed is >= 1 and <= MostSpeed)
        {
            return speed;
        }

        result.AddError(FormattableString.Invariant($"--speed: '{text}' is not a number from 1 to {MostSpeed}"));
        return UsualSpeed;
    }
}
