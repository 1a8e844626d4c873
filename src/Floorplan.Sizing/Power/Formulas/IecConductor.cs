using Floorplan.Sizing.Power.Tables;

namespace Floorplan.Sizing.Power.Formulas;

/// <summary>Cables by the IEC way: load current, then device, then cable, each not smaller than the one before.</summary>
internal static class IecConductor
{
    /// <summary>In A: what the cable must carry by the table, to carry so much where it lies.</summary>
    /// <param name="factors">For warm air, grouping, and a fuse that can be rewired; each above 0.</param>
    public static double ByTable(double device, params ReadOnlySpan<double> factors)
    {
        double all = 1;
        foreach (double factor in factors)
        {
            all *= factor;
        }

        return device / all;
    }

    /// <summary>In A, where it lies.</summary>
    public static double Carries(IecCable cable, IecMethod method, int phases, double factor) => cable.Carries(method, phases) * factor;

    /// <summary>The smallest that a device guards; null above the table.</summary>
    /// <param name="least">In mm2.</param>
    public static IecCable? Smallest(double device, IecMethod method, int phases, double factor, double least = 0)
        => IecCable.All.FirstOrDefault(
            c => c.SquareMillimetres >= least && device <= Carries(c, method, phases, factor) * (1 + 1e-9));
}
