using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;

namespace Floorplan.Checks.Measuring;

/// <summary>
/// A rule may have a lesser figure that binds and a stricter one that advises. The heaviest broken one speaks. Where the
/// plan sets its own first figure, other advice falls silent, since the person has decided; a law stays.
/// </summary>
internal static class Tiers
{
    /// <summary>Of the figures that <paramref name="measured"/> is more than, the heaviest; null when it keeps to all.</summary>
    public static AppliedLimit? Above(CheckContext context, Rule rule, double measured) => Above(Holding(context, rule), measured);

    /// <summary>Of some figures those that <paramref name="measured"/> is more than, the heaviest; null when it keeps to all.</summary>
    public static AppliedLimit? Above(IEnumerable<AppliedLimit> limits, double measured)
        => Heaviest(limits, limit => measured > limit.Value + Tolerance);

    /// <summary>Of the figures that <paramref name="measured"/> is less than, the heaviest; null when it keeps to all.</summary>
    public static AppliedLimit? Below(CheckContext context, Rule rule, double measured) =>
        Heaviest(Holding(context, rule), limit => measured < limit.Value - Tolerance);

    /// <summary>The figures that hold for this plan, each key once.</summary>
    public static IReadOnlyList<AppliedLimit> Holding(CheckContext context, Rule rule) => context.Holding(rule);

    /// <summary>Of some figures those that <paramref name="measured"/> is less than, the heaviest; null when it keeps to all.</summary>
    public static AppliedLimit? Below(IEnumerable<AppliedLimit> limits, double measured)
        => Heaviest(limits, limit => measured < limit.Value - Tolerance);

    /// <summary>A measure that is over by less than this is a rounding of the geometry, in mm.</summary>
    public const double Tolerance = 0.5;

    private static AppliedLimit? Heaviest(IEnumerable<AppliedLimit> limits, Func<AppliedLimit, bool> broken) =>
        limits.Where(broken).OrderByDescending(l => l.Severity).FirstOrDefault();
}
