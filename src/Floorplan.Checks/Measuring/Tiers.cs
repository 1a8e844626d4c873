using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Measuring;

/// <summary>
/// A rule may have a lesser figure that binds and a stricter one that advises. The heaviest broken one speaks. Where the
/// plan sets its own first figure, that figure alone holds: the person has decided.
/// </summary>
internal static class Tiers
{
    /// <summary>Of the figures that <paramref name="measured"/> is more than, the heaviest; null when it keeps to all.</summary>
    public static AppliedLimit? Above(CheckContext context, Rule rule, double measured) =>
        Heaviest(context, rule, limit => measured > limit.Value + Tolerance);

    /// <summary>Of the figures that <paramref name="measured"/> is less than, the heaviest; null when it keeps to all.</summary>
    public static AppliedLimit? Below(CheckContext context, Rule rule, double measured) =>
        Heaviest(context, rule, limit => measured < limit.Value - Tolerance);

    /// <summary>The figures that hold for this plan, each key once.</summary>
    public static IReadOnlyList<AppliedLimit> Holding(CheckContext context, Rule rule)
    {
        if (context.Limit(rule) is { SetBy: not null } set)
        {
            return [set];
        }

        return [.. rule.Limits.Select(l => l.Key).Distinct().Select(key => context.Limit(rule, key)).OfType<AppliedLimit>()];
    }

    /// <summary>A measure that is over by less than this is a rounding of the geometry, in mm.</summary>
    public const double Tolerance = 0.5;

    private static AppliedLimit? Heaviest(CheckContext context, Rule rule, Func<AppliedLimit, bool> broken) =>
        Holding(context, rule).Where(broken).OrderByDescending(l => l.Severity).FirstOrDefault();
}
