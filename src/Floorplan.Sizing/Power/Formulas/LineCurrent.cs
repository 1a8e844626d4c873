namespace Floorplan.Sizing.Power.Formulas;

/// <summary>Current, voltage and apparent power of one load.</summary>
internal static class LineCurrent
{
    public static readonly double Root3 = Math.Sqrt(3);

    /// <summary>In A in each line.</summary>
    /// <param name="voltAmperes">W of a load without a phase shift.</param>
    /// <param name="volts">Between lines of three-phase power; above 0.</param>
    public static double Amperes(double voltAmperes, double volts, int phases) => voltAmperes / (volts * Times(phases));

    /// <summary>In VA.</summary>
    public static double VoltAmperes(double amperes, double volts, int phases) => amperes * volts * Times(phases);

    private static double Times(int phases) => phases == 3 ? Root3 : 1;
}
