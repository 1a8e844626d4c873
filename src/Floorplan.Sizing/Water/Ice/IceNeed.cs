using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Ice;

/// <summary>Ice that takes the heat out of a product.</summary>
internal static class IceNeed
{
    /// <summary>Heat that melts a kilogram of ice, J.</summary>
    public const double Melting = 334_000;

    /// <summary>Of poultry above freezing, J/(kg K).</summary>
    public const double Poultry = 3310;

    /// <summary>Of lean fish, J/(kg K).</summary>
    public const double LeanFish = 3350;

    public static Source Source { get; } = new(
        "ice x 334 kJ/kg = product x specific heat x fall of temperature (FAO Fisheries Technical Paper 331, ch. 3)",
        Origin.FoundInPublicCopy);

    /// <summary>kg of ice for kg of product.</summary>
    /// <param name="heat">J/(kg K).</param>
    public static double Of(double kilograms, double heat, double fall) => kilograms * heat * Math.Max(0, fall) / Melting;
}
