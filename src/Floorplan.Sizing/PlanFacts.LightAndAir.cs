using Floorplan.Sizing.LightAndAir;

namespace Floorplan.Sizing;

/// <content>Light and air of rooms.</content>
public sealed partial class PlanFacts
{
    private IReadOnlyDictionary<string, RoomLight>? light;
    private IReadOnlyDictionary<string, RoomAir>? air;

    /// <summary>By the id of the room.</summary>
    public IReadOnlyDictionary<string, RoomLight> Light => Once(ref light, RoomLight.Of);

    /// <summary>By the id of the room; every room has one.</summary>
    public IReadOnlyDictionary<string, RoomAir> Air => Once(ref air, RoomAir.Of);
}
