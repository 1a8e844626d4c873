using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Cli.Commands.Options;

/// <summary>Options that name a time from the start of work: <c>--at 1:40</c>.</summary>
internal static class DayTime
{
    private const int MostHours = 999;

    /// <summary>In ticks; null where it is not said.</summary>
    public static Option<long?> Build(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "H:MM",
        CustomParser = result => Parse(name, result),
    };

    private static long? Parse(string name, ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        string[] sides = text.Split(':');
        if (sides.Length == 2 && sides[1].Length == 2 && Number(sides[0], MostHours) is { } hours && Number(sides[1], 59) is { } minutes)
        {
            return (hours * Ticks.Hour) + (minutes * Ticks.Minute);
        }

        result.AddError($"{name}: '{text}' is not hours and minutes from the start of work, such as 1:40");
        return null;
    }

    private static int? Number(string text, int most)
        => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number <= most ? number : null;
}
