namespace Floorplan.Sizing.Power.Formulas;

/// <summary>Machines of a kitchen are not all on at once, by US practice.</summary>
internal static class KitchenDemand
{
    /// <summary>The rows of three to five machines are from memory.</summary>
    public static double Factor(int machines) => machines switch { <= 2 => 1, 3 => 0.90, 4 => 0.80, 5 => 0.70, _ => 0.65 };

    /// <summary>In the unit of the loads; never less than the two largest.</summary>
    public static double Of(IReadOnlyList<double> loads)
        => Math.Max(loads.Sum() * Factor(loads.Count), loads.OrderDescending().Take(2).Sum());
}
