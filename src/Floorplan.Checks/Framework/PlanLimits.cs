using System.Globalization;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Limits;

namespace Floorplan.Checks.Framework;

/// <summary>Works out which figure holds: the plan's own <c>limit</c>, else the published one under the plan's code.</summary>
public sealed class PlanLimits(Plan plan)
{
    private const double WholeRatioPercent = 100;

    /// <summary>Distances from here on read better in metres or feet than as a dimension. Our own choice.</summary>
    private const double LongDistanceMm = 3000;

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
        var set = key == rule.Limits[0].Key ? plan.Limits.LastOrDefault(l => l.Rule == rule.Name && Value(l, ofKey[0].Unit) is not null) : null;
        if (set is null)
        {
            return applies is null ? null : new AppliedLimit(applies.Value, Lighter(applies.Severity, applies.Source.Heaviest), Text(applies), applies, null);
        }

        // A plan may set a figure that no law asks for under its code; then the plan's own word is no more than a warning.
        var published = applies ?? ofKey[0];
        var severity = applies is null ? Lighter(published.Severity, Severity.Warning) : published.Severity;
        double value = Value(set, published.Unit)!.Value;
        string text = $"limit {Format(value, published.Unit)}, set in this plan: {set.Reason}; published: {Format(published.Value, published.Unit)} ({published.Source.Text})";
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

    /// <summary>A <c>limit</c> statement's figure in a rule's unit; null when it is of another kind.</summary>
    public static double? Value(LimitOverride set, LimitUnit unit) => unit switch
    {
        LimitUnit.Millimetres => set.Length?.Millimetres,
        LimitUnit.SquareMetres when set.Quantity is { Unit.Kind: QuantityKind.Area } area => area.Base,
        LimitUnit.CubicMetres when set.Quantity is { Unit.Kind: QuantityKind.Volume } volume => volume.Base,
        LimitUnit.Celsius when set.Quantity is { Unit.Kind: QuantityKind.Temperature } temperature => temperature.Base,
        LimitUnit.Percent when set.Quantity is { Unit.Kind: QuantityKind.Ratio } ratio => ratio.Base * WholeRatioPercent,
        LimitUnit.Count when set.Quantity is { Unit.Kind: QuantityKind.Count } count => count.Base,
        LimitUnit.Kilograms when set.Quantity is { Unit.Kind: QuantityKind.Mass } mass => mass.Base,
        LimitUnit.Lux when set.Quantity is { Unit.Kind: QuantityKind.Illuminance } light => light.Base,
        LimitUnit.AirChanges when set.Quantity is { Unit.Kind: QuantityKind.Rate } rate => rate.Base * SecondsPerHour,
        LimitUnit.AirFlow when set.Quantity is { Unit.Kind: QuantityKind.AirFlow or QuantityKind.Flow } flow => flow.Base,
        _ => null,
    };

    /// <summary>A value in a limit's unit, in the plan's own units.</summary>
    public string Format(double value, LimitUnit unit) => unit switch
    {
        LimitUnit.Millimetres when Math.Abs(value) >= LongDistanceMm => LengthText.Distance(value, plan.Units),
        LimitUnit.Millimetres => LengthText.Sentence(Length.FromMillimetres(value), plan.Units),
        LimitUnit.SquareMetres when plan.Units == UnitSystem.Metric => value.ToString("0.#", CultureInfo.InvariantCulture) + " m2",
        LimitUnit.SquareMetres => (value / InchPound.SquareMetresPerSquareFoot).ToString("0", CultureInfo.InvariantCulture) + " sq ft",
        LimitUnit.CubicMetres when plan.Units == UnitSystem.Metric => value.ToString("0.#", CultureInfo.InvariantCulture) + " m3",
        LimitUnit.CubicMetres => (value / InchPound.CubicMetresPerCubicFoot).ToString("0", CultureInfo.InvariantCulture) + " cu ft",
        LimitUnit.Celsius when plan.Units == UnitSystem.Metric => value.ToString("0.#", CultureInfo.InvariantCulture) + " C",
        LimitUnit.Celsius => InchPound.Fahrenheit(value).ToString("0.#", CultureInfo.InvariantCulture) + " F",
        LimitUnit.Kilograms when plan.Units == UnitSystem.Metric => value.ToString("0", CultureInfo.InvariantCulture) + " kg",
        LimitUnit.Kilograms => (value / InchPound.KilogramsPerPound).ToString("0", CultureInfo.InvariantCulture) + " lb",
        LimitUnit.Lux when plan.Units == UnitSystem.Metric => value.ToString("0", CultureInfo.InvariantCulture) + " lux",
        LimitUnit.Lux => (value * InchPound.SquareMetresPerSquareFoot).ToString("0.#", CultureInfo.InvariantCulture) + " fc",
        LimitUnit.AirChanges => value.ToString("0.#", CultureInfo.InvariantCulture) + " changes/h",
        LimitUnit.AirFlow when plan.Units == UnitSystem.Metric => (value * SecondsPerHour).ToString("0", CultureInfo.InvariantCulture) + " m3/h",
        LimitUnit.AirFlow => (value / InchPound.CubicMetresPerSecondOfCubicFootPerMinute).ToString("0", CultureInfo.InvariantCulture) + " cfm",
        LimitUnit.Percent => value.ToString("0.##", CultureInfo.InvariantCulture) + " %",
        _ => value.ToString("0.##", CultureInfo.InvariantCulture),
    };

    private const double SecondsPerHour = 3600;

    private string Text(RuleLimit limit) => $"limit {Format(limit.Value, limit.Unit)} ({limit.Source.Text})";

    private static Severity Lighter(Severity a, Severity b) => a < b ? a : b;
}
