using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Sizes;

/// <summary>All that a unit needs, subject by subject.</summary>
public sealed record PlanSizes(IReadOnlyList<SizedSubject> Subjects)
{
    /// <summary>Subjects that the plan has nothing of are left out.</summary>
    internal static PlanSizes Of(PlanFacts facts) => new([.. BeforeMoney(facts), facts.MoneySizes]);

    /// <summary>Each figure once, in the order of the subjects.</summary>
    public IEnumerable<Figure> Figures => Subjects.SelectMany(s => s.Figures).Distinct();

    /// <summary>All subjects but money, which prices them.</summary>
    internal static IEnumerable<SizedSubject> BeforeMoney(PlanFacts facts) => All(facts).OfType<SizedSubject>();

    private static IEnumerable<SizedSubject?> All(PlanFacts facts)
    {
        yield return facts.WaterSizes;
        yield return facts.HotWaterSizes;
        yield return facts.DrainSizes;
        yield return facts.PowerSizes;
        yield return facts.ColdSizes;
        yield return facts.AirSizes;
        yield return facts.LightSizes;
        yield return facts.WeightSizes;
        yield return facts.GroundSizes;
        yield return facts.SteelSizes;
    }
}
