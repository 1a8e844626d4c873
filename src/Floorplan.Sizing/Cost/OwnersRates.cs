using Floorplan.Model;
using Floorplan.Model.Rates;

namespace Floorplan.Sizing.Cost;

/// <summary>The rates of the file and of the day, found by name; what was asked for and what was not.</summary>
internal sealed class OwnersRates
{
    private readonly IReadOnlyList<Rate> rates;
    private readonly HashSet<Rate> used = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Rate, Factor> factors = new(ReferenceEqualityComparer.Instance);

    public OwnersRates(Plan plan)
    {
        Currency = plan.Head.Rates?.Currency ?? "";

        // What the day says comes first: it is nearer to the plan.
        rates = [.. plan.Day?.Rates ?? [], .. plan.Head.Rates?.Rows ?? []];
    }

    public string Currency { get; }

    public bool IsEmpty => rates.Count == 0;

    public IEnumerable<Rate> Unused => rates.Where(r => !used.Contains(r));

    /// <summary>A rate in a unit of one of these kinds, with what one of its units is in the base unit; null without one.</summary>
    public (Factor Factor, RateKind Kind, double Base)? Find(string name, params ReadOnlySpan<RateKind> kinds)
    {
        foreach (var rate in rates)
        {
            if (rate.What.Equals(name, StringComparison.OrdinalIgnoreCase) && RateUnits.Find(rate.Unit) is { } unit
                && kinds.Contains(unit.Kind))
            {
                return (Take(rate), unit.Kind, unit.Base);
            }
        }

        return null;
    }

    /// <summary>All that cost so much a year and were not found by a name of their own.</summary>
    public IReadOnlyList<Factor> Yearly()
        => [.. Unused.Where(r => RateUnits.Find(r.Unit)?.Kind == RateKind.Yearly)
            .DistinctBy(r => r.What, StringComparer.OrdinalIgnoreCase).ToList().Select(Take)];

    private Factor Take(Rate rate)
    {
        used.Add(rate);
        if (!factors.TryGetValue(rate, out var factor))
        {
            factors[rate] = factor = Factor.From(rate);
        }

        return factor;
    }
}
