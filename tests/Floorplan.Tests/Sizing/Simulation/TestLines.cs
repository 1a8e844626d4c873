using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>Lines without a plan, for tests against formulas.</summary>
internal static class TestLines
{
    /// <summary>Items come one by one, or all at once, and go from step to step on their own.</summary>
    public static ProductLine Of(LineSupply supply, params LineStep[] steps) => new()
    {
        Supply = supply,
        Steps = [Source, .. steps],
        Moves = [.. steps.Select((_, i) => new LineMove(i, i + 1))],
    };

    public static LineStep Source { get; } = new() { Name = "outside", Places = LineStep.Unlimited };

    /// <summary>So many servers, each with random times of this mean, and room for all that wait.</summary>
    public static LineStep Server(int places, TaskTime time, int waits = LineStep.Unlimited / 4) =>
        new() { Name = "server", Places = places, Stay = time, Waits = waits };

    public static TaskTime Minutes(double minutes) => TaskTime.OfSeconds(60 * minutes);
}
