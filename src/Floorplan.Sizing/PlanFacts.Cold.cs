using Floorplan.Sizing.Cold.Loads;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing;

/// <content>Cold rooms.</content>
public sealed partial class PlanFacts
{
    private IReadOnlyList<ColdRoomLoad>? coldRooms;
    private Told<SizedSubject>? coldSizes;

    /// <summary>What the cooling unit of each cold room has to carry away; rooms that do not say what they keep are left out.</summary>
    public IReadOnlyList<ColdRoomLoad> ColdRooms => Once(ref coldRooms, Cold.Loads.ColdRooms.Of);

    /// <summary>Null where the plan has no cold room and nothing that cools product.</summary>
    public SizedSubject? ColdSizes => Once(ref coldSizes, f => new Told<SizedSubject>(Cold.ColdSizes.Of(f))).Value;
}
