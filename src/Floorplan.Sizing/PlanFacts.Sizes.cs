using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing;

/// <content>What the unit needs, subject by subject.</content>
public sealed partial class PlanFacts
{
    private PlanSizes? sizes;
    private Told<SizedSubject>? waterSizes;

    public PlanSizes Sizes => Once(ref sizes, PlanSizes.Of);

    /// <summary>Null where the plan has no water.</summary>
    public SizedSubject? WaterSizes => Once(ref waterSizes, f => new Told<SizedSubject>(Water.Sizes.WaterSizes.Of(f))).Value;
}
