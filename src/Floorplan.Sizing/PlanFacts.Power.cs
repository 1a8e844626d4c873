using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing;

/// <content>Circuits, panels and what carries them.</content>
public sealed partial class PlanFacts
{
    private Told<Floorplan.Sizing.Power.Sizes.PowerDesign>? powerDesign;
    private Told<SizedSubject>? powerSizes;

    /// <summary>Circuits, panels and a generator; null where the plan has no power.</summary>
    public Floorplan.Sizing.Power.Sizes.PowerDesign? PowerDesign
        => Once(ref powerDesign, f => new(Floorplan.Sizing.Power.Sizes.PowerDesign.Of(f))).Value;

    /// <summary>Null where the plan has no power.</summary>
    public SizedSubject? PowerSizes => Once(ref powerSizes, f => new(Floorplan.Sizing.Power.Sizes.PowerSizes.Of(f))).Value;
}
