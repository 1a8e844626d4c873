using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Stations;

/// <summary>Heights taken where the plan gives only a width and a depth. All own assumptions.</summary>
internal static class UsualSizes
{
    /// <summary>Benches and tables: near the usual standing work height.</summary>
    public static Length Station { get; } = Length.FromMillimetres(900);

    /// <summary>Racks: what one reaches without a step.</summary>
    public static Length Store { get; } = Length.FromMillimetres(1800);

    public static Length Bin { get; } = Length.FromMillimetres(800);

    public static Length Sink { get; } = Length.FromMillimetres(900);

    public static Length HeightOf(StationRole role) => role switch
    {
        StationRole.Store => Store,
        StationRole.Bin => Bin,
        StationRole.Sink => Sink,
        _ => Station,
    };
}
