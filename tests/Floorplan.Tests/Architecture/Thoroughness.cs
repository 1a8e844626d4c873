namespace Floorplan.Tests.Architecture;

/// <summary>
/// The suite is quick unless FLOORPLAN_TESTS is <c>whole</c>, as in CI: long tests then run over all their cases, else over a thin slice.
/// </summary>
internal static class Thoroughness
{
    public static bool Whole { get; } = Environment.GetEnvironmentVariable("FLOORPLAN_TESTS") == "whole";

    /// <summary>All cases, or every <paramref name="step"/>th. The first ones are often the plainest, so the slice begins later.</summary>
    public static IEnumerable<T> Slice<T>(IEnumerable<T> cases, int step) =>
        Whole ? cases : cases.Where((_, i) => i % step == step * 2 / 3);
}
