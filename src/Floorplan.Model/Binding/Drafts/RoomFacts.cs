using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Rooms;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about a room beside its shape.</summary>
internal sealed record RoomFacts(RoomDraft Shape, string Label, HygieneClass Class)
{
    public double? KeepCelsius { get; init; }

    public double? CoolingWatts { get; init; }

    public SaidLamps? Lamps { get; init; }

    public double? Lux { get; init; }

    public bool? WashedDown { get; init; }

    public Length? CeilingHeight { get; init; }

    public IReadOnlyDictionary<string, string> Finishes { get; init; } = new Dictionary<string, string>();
}
