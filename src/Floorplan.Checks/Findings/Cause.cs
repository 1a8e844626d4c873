using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Findings;

/// <summary>
/// Another rule whose finding already explains one of this rule, which then stays silent; see <see cref="Rule.FollowsFrom"/>.
/// </summary>
/// <param name="Rule">Name of the other rule.</param>
public sealed record Cause(string Rule, CauseScope Scope)
{
    /// <summary>Rules whose finding explains one on the same things.</summary>
    public static IEnumerable<Cause> AtSameThings(params string[] rules) => rules.Select(r => new Cause(r, CauseScope.SameThings));

    /// <summary>Rules that find that a thing stands where it cannot; then all else about it is for later.</summary>
    public static IEnumerable<Cause> Misplaced(params string[] rules) => rules.Select(r => new Cause(r, CauseScope.Misplaced));
}

/// <summary>When the finding of another rule explains one.</summary>
public enum CauseScope
{
    /// <summary>It names all things of the explained one; its room only where that names nothing else.</summary>
    SameThings,

    /// <summary>
    /// It says that one of the things stands where it cannot (<see cref="Finding.Misplaced"/>). Once that is accepted, what follows
    /// from it is told.
    /// </summary>
    Misplaced,
}
