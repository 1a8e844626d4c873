using Floorplan.Sizing.LightAndAir;

namespace Floorplan.Sizing;

/// <content>Light and air of rooms.</content>
public sealed partial class PlanFacts
{
    private IReadOnlyDictionary<string, RoomLight>? light;

    /// <summary>By the id of the room.</summary>
    public IReadOnlyDictionary<string, RoomLight> Light => Once(ref light, RoomLight.Of);
}
