using Floorplan.Sizing.LightAndAir;
using Floorplan.Sizing.LightAndAir.Lamps;
using Floorplan.Sizing.LightAndAir.Rooms;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing;

/// <content>Light and air of rooms.</content>
public sealed partial class PlanFacts
{
    private IReadOnlyDictionary<string, RoomLight>? light;
    private IReadOnlyDictionary<string, RoomLamps>? lamps;
    private IReadOnlyDictionary<string, RoomAir>? air;
    private IReadOnlyList<HotTank>? hotTanks;
    private Told<SizedSubject>? airSizes;
    private Told<SizedSubject>? lightSizes;

    /// <summary>By the id of the room.</summary>
    public IReadOnlyDictionary<string, RoomLight> Light => Once(ref light, RoomLight.Of);

    /// <summary>By the id of the room: lamps that the plan says, or that the light it says needs.</summary>
    public IReadOnlyDictionary<string, RoomLamps> Lamps => Once(ref lamps, RoomLamps.Of);

    /// <summary>By the id of the room; every room has one.</summary>
    public IReadOnlyDictionary<string, RoomAir> Air => Once(ref air, RoomAir.Of);

    /// <summary>Tanks of hot water that stand open.</summary>
    public IReadOnlyList<HotTank> HotTanks => Once(ref hotTanks, HotTank.Of);

    /// <summary>Null where nobody works and no fan is said.</summary>
    public SizedSubject? AirSizes => Once(ref airSizes, f => new Told<SizedSubject>(LightAndAir.Rooms.AirSizes.Of(f))).Value;

    /// <summary>Null where the plan says no light.</summary>
    public SizedSubject? LightSizes => Once(ref lightSizes, f => new Told<SizedSubject>(LightAndAir.Lamps.LightSizes.Of(f))).Value;
}
