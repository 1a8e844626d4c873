using Floorplan.Checks.Findings;
using Floorplan.Checks.Limits;
using Floorplan.Model;

namespace Floorplan.Checks.Framework;

/// <summary>
/// One rule of the trade, in one file: what it says, why, where the figure comes from, examples, and the check itself.
/// The rule page, <c>explain</c>, the catalogue and the example tests all come from here.
/// </summary>
public abstract class Rule
{
    /// <summary>Kebab-case; states the fault and is permanent.</summary>
    public abstract string Name { get; }

    /// <summary>The group that <c>rules</c> lists it under.</summary>
    public abstract RuleGroup Group { get; }

    /// <summary>One sentence: what is found.</summary>
    public abstract string Says { get; }

    /// <summary>Why it matters on the floor, in a few sentences.</summary>
    public abstract string Why { get; }

    /// <summary>What usually mends it.</summary>
    public abstract string Mend { get; }

    /// <summary>Where the rule and its figures come from; at least one.</summary>
    public abstract IReadOnlyList<Source> Sources { get; }

    /// <summary>
    /// The figures, settable with <c>limit</c>; empty when the rule has none. The first is the one that <c>limit</c> sets.
    /// </summary>
    public virtual IReadOnlyList<RuleLimit> Limits => [];

    /// <summary>A whole small plan that has this fault, once.</summary>
    public abstract string Bad { get; }

    /// <summary>The changes of its lines that mend it.</summary>
    public abstract IReadOnlyList<LineChange> Mended { get; }

    /// <summary>The bad plan with its changes made.</summary>
    public string Good => LineChange.Apply(Bad, Mended);

    /// <summary>Caution for work that can hurt; null when none applies.</summary>
    public virtual string? Caution => null;

    /// <summary>
    /// Rules whose finding already explains one of this rule; then this one stays silent. The one place where rules say so.
    /// </summary>
    public virtual IReadOnlyList<Cause> FollowsFrom => [];

    /// <summary>
    /// False where the rule has nothing to look at, such as a trailer's rule on a shed: then it does not run, and reports do not list
    /// it.
    /// </summary>
    public virtual bool AppliesTo(Plan plan) => true;

    /// <summary>The key of the figure that the plan is held against, where a rule has one for each kind of shell.</summary>
    public virtual string MainKey(Plan plan) => Limits[0].Key;

    /// <summary>Which of its figures a plan may be held against, where some are for one kind of shell only.</summary>
    public virtual bool Uses(Plan plan, string key) => true;

    /// <summary>What is printed for a plan that none of its figures holds for.</summary>
    public virtual Source SourceFor(Plan plan) => PlanSources.For(plan.Head, Sources);

    public abstract IEnumerable<Finding> Check(CheckContext context);
}
