using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Checks.Limits;

/// <summary>Works out which figure holds: the plan's own <c>limit</c>, else the published one under the plan's code.</summary>
public sealed class PlanLimits(Plan plan)
{
    /// <summary>Null when the figure does not apply under the plan's code and the plan sets none.</summary>
    /// <exception cref="ArgumentException">The rule has no limit of this key: a slip in the rule.</exception>
    public AppliedLimit? Find(Rule rule, string key)
    {
        var ofKey = rule.Limits.Where(l => l.Key == key).Select(l => l.For(plan.Head.People)).ToList();
        if (ofKey.Count == 0)
        {
            throw new ArgumentException($"rule {rule.Name} has no limit '{key}'", nameof(key));
        }

        RuleLimit? applies = ofKey.Find(l => l.AppliesUnder(plan.Head.Code));
        var set = key == rule.Limits[0].Key
            ? plan.Limits.LastOrDefault(l => l.Rule == rule.Name && LimitUnits.Value(l, ofKey[0].Unit) is not null)
            : null;
        if (set is null)
        {
            return applies is null
                ? null
                : new AppliedLimit(applies.Value, Lighter(applies.Severity, applies.Source.Heaviest), Text(applies), applies, null);
        }

        // A plan may set a figure that no law asks for under its code; then the plan's own word is no more than a warning.
        var published = applies ?? ofKey[0];
        var severity = applies is null ? Lighter(published.Severity, Severity.Warning) : published.Severity;
        double value = LimitUnits.Value(set, published.Unit)!.Value;
        string text =
            $"limit {Format(value, published.Unit)}, set in this plan: {set.Reason}; published: "
                + $"{Format(published.Value, published.Unit)} ({published.Source.Text})";
        return new AppliedLimit(value, Lighter(severity, published.Source.Heaviest), text, published, set);
    }

    /// <summary>
    /// The figures that hold for this plan, each key once. Where the plan sets the first one, other advice falls silent, since the person
    /// has decided; a law stays.
    /// </summary>
    public IReadOnlyList<AppliedLimit> Holding(Rule rule)
    {
        var all = rule.Limits.Select(l => l.Key).Distinct().Select(key => Find(rule, key)).OfType<AppliedLimit>().ToList();
        return Find(rule, rule.Limits[0].Key) is { SetBy: not null } set
            ? [set, .. all.Where(l => l.Severity == Severity.Error && l.Published.Key != set.Published.Key)]
            : all;
    }

    private string Format(double value, LimitUnit unit) => LimitUnits.Text(value, unit, plan.Units);

    private string Text(RuleLimit limit) => $"limit {Format(limit.Value, limit.Unit)}{InInches(limit)} ({limit.Source.Text})";

    /// <summary>A figure that was published in inches is no whole millimetre, and no metric tape shows it.</summary>
    private string InInches(RuleLimit limit)
    {
        const double inch = 25.4;
        double inches = limit.Value / inch;
        return plan.Units == UnitSystem.Metric && limit.Unit == LimitUnit.Millimetres && limit.Body is null
            && Math.Abs(limit.Value - Math.Round(limit.Value)) > 1e-6 && Math.Abs(inches - Math.Round(inches)) < 1e-6
            ? FormattableString.Invariant($", which is {inches:0} in")
            : "";
    }

    private static Severity Lighter(Severity a, Severity b) => a < b ? a : b;
}
