using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.TheDay;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class DayRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new FallsBehind(),
        new NotLongEnough(),
        new ChillTooSlow(),
        new StoreTooSmall(),
        new BinFillsUp(),
        new QueueOverflows(),
        new CrewOverworked(),
        new CrewCannotBeThere(),
        new StepWithoutFigure(),
    ];
}
