using Floorplan.Sizing.Cold.Fabric;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>What the sun adds to the air before a dark wall or roof, by sol-air.</summary>
internal static class Sun
{
    /// <summary>Mean of a clear summer day and night, W/m2; own assumption.</summary>
    public const double OnRoof = 300;
    public const double OnWalls = 120;

    /// <summary>In K; nothing on partitions and floors.</summary>
    public static double Adds(SideKind side) => side switch
    {
        SideKind.Wall => SolAir.Temperature(0, SolAir.Dark, OnWalls, 0),
        SideKind.Ceiling => SolAir.Temperature(0, SolAir.Dark, OnRoof, SolAir.SkyOnRoof),
        _ => 0,
    };
}
