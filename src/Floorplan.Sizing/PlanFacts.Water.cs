using Floorplan.Sizing.Drainage;
using Floorplan.Sizing.Water;

namespace Floorplan.Sizing;

/// <content>Water and drains.</content>
public sealed partial class PlanFacts
{
    private Supply? supply;
    private IReadOnlyList<HandTap>? handTaps;
    private HoseCover? hoseCover;
    private IReadOnlyDictionary<string, RoomDrainage>? drainage;

    public Supply Supply => Once(ref supply, Water.Supply.Of);

    public IReadOnlyList<HandTap> HandTaps => Once(ref handTaps, HandTap.Of);

    public HoseCover HoseCover => Once(ref hoseCover, Water.HoseCover.Of);

    /// <summary>By the id of the room; rooms whose floor runs to no drain are left out.</summary>
    public IReadOnlyDictionary<string, RoomDrainage> Drainage => Once(ref drainage, RoomDrainage.Of);
}
