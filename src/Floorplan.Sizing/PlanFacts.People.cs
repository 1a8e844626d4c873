using Floorplan.Sizing.Carrying;
using Floorplan.Sizing.CarryingIn;
using Floorplan.Sizing.Keeping;
using Floorplan.Sizing.Lifting;
using Floorplan.Sizing.Staffing;

namespace Floorplan.Sizing;

/// <content>People: how many, what they lift and carry, and what is carried in to set the unit up.</content>
public sealed partial class PlanFacts
{
    private Crew? crew;
    private IReadOnlyList<HandLift>? lifts;
    private Ways? ways;
    private BringingIn? bringingIn;
    private KeptBringingIn? keptBringingIn;

    public Crew Crew => Once(ref crew, Crew.Of);

    /// <summary>Every lift that the flows ask of hands.</summary>
    public IReadOnlyList<HandLift> Lifts => Once(ref lifts, HandLifts.Of);

    /// <summary>How far each leg is, and each carry by hand.</summary>
    public Ways Ways => Once(ref ways, Ways.Of);

    /// <summary>In which order things are carried in.</summary>
    public BringingIn BringingIn => Once(
        ref bringingIn, f => (f.keptBringingIn = KeptBringingIn.For(f.Plan, f.keptBringingIn)).Of(f.Plan));
}
