using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Products;

/// <summary>What it takes to cool and freeze a food.</summary>
/// <param name="Name">For the working: <c>poultry</c>.</param>
/// <param name="Above">kJ/kgK before it freezes.</param>
/// <param name="Below">kJ/kgK when it is frozen.</param>
/// <param name="Latent">kJ/kg to freeze it.</param>
/// <param name="Freezes">Where it begins to freeze, C.</param>
internal sealed record ProductHeat(string Name, double Above, double Below, double Latent, double Freezes, Source Source)
{
    /// <summary>What pieces of it are made of; null where it does not come in whole pieces.</summary>
    public FoodParts? Parts { get; init; }

    /// <summary>kJ out of each kg; 0 where it is to be no colder.</summary>
    public double PerKilogram(double from, double to)
    {
        double before = Math.Max(0, from - Math.Max(to, Freezes)) * Above;
        double after = Math.Max(0, Math.Min(from, Freezes) - to) * Below;
        return before + after + (from > Freezes && to < Freezes ? Latent : 0);
    }
}
