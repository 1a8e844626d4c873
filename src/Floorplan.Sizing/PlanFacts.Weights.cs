using Floorplan.Sizing.Trailers;
using Floorplan.Sizing.Weights;

namespace Floorplan.Sizing;

/// <content>Weights, and how a trailer and a floor carry them.</content>
public sealed partial class PlanFacts
{
    private ItemWeights? items;
    private IReadOnlyList<Layer>? layers;
    private UnitWeight? weight;
    private IReadOnlyList<FloorLoad>? floorLoads;
    private IReadOnlyList<TrailerLoad>? trailerLoads;

    /// <summary>What the things weigh.</summary>
    public ItemWeights Items => Once(ref items, ItemWeights.Of);

    /// <summary>Linings, floor build-up and partitions of what is lifted or towed.</summary>
    public IReadOnlyList<Layer> Layers => Once(ref layers, Weights.ShellLayers.Of);

    public UnitWeight Weight => Once(ref weight, UnitWeight.Of);

    /// <summary>The most heavily loaded metre of a container's floor; none where nothing with a weight stands in it.</summary>
    public FloorLoad? FloorLoad => Once(ref floorLoads, f => Weights.FloorLoad.Of(f) is { } load ? [load] : []).FirstOrDefault();

    /// <summary>With everything full, then with everything empty; none where the plan does not say enough.</summary>
    public IReadOnlyList<TrailerLoad> TrailerLoads => Once(
        ref trailerLoads, f =>
            TrailerLoad.Of(f, full: true) is { } full && TrailerLoad.Of(f, full: false) is { } empty ? [full, empty] : []);
}
