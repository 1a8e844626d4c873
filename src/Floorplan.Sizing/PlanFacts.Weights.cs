using Floorplan.Sizing.Trailers;
using Floorplan.Sizing.Weights;
using Floorplan.Sizing.Weights.Crane;

namespace Floorplan.Sizing;

/// <content>Weights, and how a trailer and a floor carry them.</content>
public sealed partial class PlanFacts
{
    private ItemWeights? items;
    private IReadOnlyList<Layer>? layers;
    private UnitWeight? weight;
    private IReadOnlyList<FloorLoad>? floorLoads;
    private IReadOnlyList<TrailerLoad>? trailerLoads;
    private Told<TankStates>? tankStates;
    private WorkingWeight? workingWeight;
    private IReadOnlyList<CraneLift>? craneLifts;
    private Told<CentreOfWeight>? centreEmpty;
    private Told<CentreOfWeight>? centreFull;

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
            TrailerLoad.Of(f, LoadState.Of(f.Weight, full: true)) is { } full
            && TrailerLoad.Of(f, LoadState.Of(f.Weight, full: false)) is { } empty ? [full, empty] : []);

    /// <summary>Whichever tanks of a trailer are full; null where the plan does not say enough, or nothing can be filled.</summary>
    public TankStates? TankStates => Once(ref tankStates, f => new Told<TankStates>(Trailers.TankStates.Of(f))).Value;

    /// <summary>With everything empty; null without any weight.</summary>
    public CentreOfWeight? CentreEmpty => Once(ref centreEmpty, f => new Told<CentreOfWeight>(CentreOfWeight.Of(f, full: false))).Value;

    /// <summary>With everything full; null without any weight.</summary>
    public CentreOfWeight? CentreFull => Once(ref centreFull, f => new Told<CentreOfWeight>(CentreOfWeight.Of(f, full: true))).Value;

    /// <summary>A container on a crane, empty and full; none where its weight is not whole.</summary>
    public IReadOnlyList<CraneLift> CraneLifts
        => Once(ref craneLifts, f => [.. new[] { false, true }.Select(full => CraneLift.Of(f, full)).OfType<CraneLift>()]);

    /// <summary>With people and product in it.</summary>
    public WorkingWeight WorkingWeight => Once(ref workingWeight, Weights.WorkingWeight.Of);
}
