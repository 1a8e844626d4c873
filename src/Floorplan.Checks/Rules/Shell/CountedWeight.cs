using Floorplan.Sizing;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>What is counted in a weight, for sentences: so that nobody takes a part for the whole.</summary>
internal static class CountedWeight
{
    /// <summary><c>4 of 9 things have a weight in the plan; linings, floor, partitions and frames 610 kg</c>.</summary>
    public static string Of(PlanFacts facts) =>
        facts.Items.Counted + (facts.Weight.BuiltIn is { } built ? $"; linings, floor, partitions and frames {built.Text}" : "");

    /// <summary>What the sentence prints.</summary>
    public static IEnumerable<Figure> Figures(PlanFacts facts) => facts.Weight.BuiltIn is { } built ? [built] : [];
}
