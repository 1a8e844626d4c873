using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Words;
using Floorplan.Model;
using Floorplan.Model.Limits;

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

        var (applies, fit) = Closest(ofKey);
        var set = key == rule.Limits[0].Key
            ? plan.Limits.LastOrDefault(l => l.Rule == rule.Name && LimitUnits.Value(l, ofKey[0].Unit) is not null)
            : null;
        if (set is null)
        {
            return applies is null ? null : fit == ScopeFit.Binds
                ? new AppliedLimit(applies.Value, Lighter(applies.Severity, applies.Source.Heaviest), Text(applies), applies, null)
                : new AppliedLimit(applies.Value, Severity.Note, Advice(applies, fit), applies, null) { IsAdvice = true };
        }

        // A plan may set a figure that no law asks for under its code; then the plan's own word is no more than a warning.
        var published = applies ?? ofKey[0];
        var severity = fit == ScopeFit.Binds ? Lighter(published.Severity, published.Source.Heaviest) : Severity.Warning;
        double value = LimitUnits.Value(set, published.Unit)!.Value;
        string text =
            $"limit {Format(value, published.Unit)}, set in this plan: {set.Reason}; published: "
                + $"{Format(published.Value, published.Unit)} ({published.Source.Text})";
        return new AppliedLimit(value, severity, text, published, set);
    }

    /// <summary>Of the figures of one key the one that binds, the closest first; else one that may be quoted; else none.</summary>
    private (RuleLimit? Limit, ScopeFit Fit) Closest(List<RuleLimit> ofKey)
    {
        var best = ofKey.Select(l => (Limit: l, Fit: l.FitsTo(plan.Head))).Where(l => l.Fit != ScopeFit.None)
            .OrderByDescending(l => l.Fit).ThenByDescending(l => l.Limit.Source.Scope.Closeness(plan.Head)).FirstOrDefault();
        return (best.Limit, best.Fit);
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

    /// <summary><c>no figure for cheese under code eu; South African poultry rules ask 3 m</c>, in our words for it.</summary>
    private string Advice(RuleLimit limit, ScopeFit fit)
    {
        var scope = limit.Source.Scope;
        string figure = $"{Format(limit.Value, limit.Unit)}{InInches(limit)}";
        if (fit == ScopeFit.OtherPlace)
        {
            string trades = string.Join(" or ", plan.Head.Trades.Where(scope.Trades.Contains).Select(t => t.Word()));
            string where = plan.Head.Country.Length > 0
                ? $"in {Countries.Names[plan.Head.Country]}"
                : $"under code {plan.Head.Code.Word()}";
            return $"no figure for {trades} {where}; elsewhere {figure} is asked ({limit.Source.Text})";
        }

        string missing = scope.Trades.Count > 0 && plan.Head.Trades.Count == 0
            ? $"it is of {string.Join(", ", scope.Trades.Select(t => t.Word()))}, and the plan does not say its `trade`"
            : "the plan does not say whose `plant` it is";
        return $"advice {figure} ({limit.Source.Text}); {missing}";
    }

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
