using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Openings;

namespace Floorplan.Model.Binding.Placing;

/// <summary>The things of a plan, each with its place. Null for services that have none of their own.</summary>
internal sealed record PlacedThings(
    IReadOnlyList<(OpeningToPlace Opening, Placeable Placed)> Openings,
    IReadOnlyList<(StationDraft Draft, Placeable Placed)> Stations,
    IReadOnlyList<(ServiceDraft Draft, Placeable? Placed)> Services)
{
    public IReadOnlyList<Placeable> All { get; } =
        [.. Openings.Select(o => o.Placed), .. Stations.Select(s => s.Placed), .. Services.Select(s => s.Placed).OfType<Placeable>()];
}
