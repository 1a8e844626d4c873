using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing;

/// <content>What the unit needs, subject by subject.</content>
public sealed partial class PlanFacts
{
    private PlanSizes? sizes;
    private Told<SizedSubject>? waterSizes;
    private Told<SizedSubject>? weightSizes;
    private Told<SizedSubject>? groundSizes;
    private Told<SizedSubject>? steelSizes;
    private SizedSubject? moneySizes;

    public PlanSizes Sizes => Once(ref sizes, PlanSizes.Of);

    /// <summary>Null where the plan has no water.</summary>
    public SizedSubject? WaterSizes => Once(ref waterSizes, f => new Told<SizedSubject>(Water.Sizes.WaterSizes.Of(f))).Value;

    /// <summary>Null for a shed.</summary>
    public SizedSubject? WeightSizes => Once(ref weightSizes, f => new Told<SizedSubject>(Weights.Sizes.WeightSizes.Of(f))).Value;

    /// <summary>Null for what is no container.</summary>
    public SizedSubject? GroundSizes => Once(ref groundSizes, f => new Told<SizedSubject>(Ground.GroundSizes.Of(f))).Value;

    /// <summary>Null where no wall of a container is cut and nothing is framed.</summary>
    public SizedSubject? SteelSizes => Once(ref steelSizes, f => new Told<SizedSubject>(Frames.Sizes.SteelSizes.Of(f))).Value;

    /// <summary>Last of all, because it prices what the others have worked out.</summary>
    public SizedSubject MoneySizes => Once(ref moneySizes, f => Cost.MoneySizes.Of(f, [.. PlanSizes.BeforeMoney(f)]));
}
