namespace Floorplan.Tests.Checks.Support;

/// <summary>
/// One figure of one rule, with a plan that can be drawn right at it. The figure stands here as its source gives it, and the
/// plan is laid out by arithmetic of the test's own.
/// </summary>
/// <param name="Rule">Name of the rule.</param>
/// <param name="Figure">What it is, with source, clause and origin; names the case.</param>
/// <param name="Limit">In the rule's unit: mm, m2 or %.</param>
/// <param name="Past">The nearest value that is past the limit; how near it is says what counts as a rounding.</param>
/// <param name="Plan">A plan in which the measured value is the one given.</param>
/// <param name="Things">Ids that the finding is about.</param>
public sealed record Edge(string Rule, string Figure, double Limit, double Past, Func<double, string> Plan, params string[] Things)
{
    /// <summary>
    /// A figure for <c>limit</c> that <see cref="Past"/> keeps to, and one that <see cref="Limit"/> is past; null where the figure
    /// cannot be set.
    /// </summary>
    public (string Loose, string Strict)? Set { get; init; }


    /// <summary>Another figure of the rule, by value, speaks at this one; otherwise the rule is silent there.</summary>
    public double? Lighter { get; init; }

    /// <summary>How far the measured value may be from the one laid out: it is given in the rule's unit.</summary>
    public double Within { get; init; } = 0.01;

    public override string ToString() => $"{Rule}: {Figure}";
}
