using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>What a three-phase motor draws at full load at 400 V and at 230 V, by its shaft power.</summary>
internal static class IecMotorCurrents
{
    public static readonly Source ThreePhase = new(
        "motor currents at 400 and 230 V, appendix of a maker of drives, two copies alike", Origin.FoundInSecondaryCopy);

    /// <summary>1.5 hp is 1.12 kW and is sold as 1.1 kW.</summary>
    private const double SameRow = 1.03;

    private static readonly double[] Volts = [400, 230];

    private static readonly (double Kilowatts, double[] Amperes)[] Rows =
    [
        (0.37, [1.1, 2.0]),
        (0.55, [1.5, 2.7]),
        (0.75, [1.9, 3.2]),
        (1.1, [2.6, 4.6]),
        (1.5, [3.6, 6.3]),
        (2.2, [5.0, 8.7]),
        (3, [6.6, 11.5]),
        (4, [8.5, 14.8]),
        (5.5, [11.3, 19.6]),
        (7.5, [15.2, 26.4]),
        (11, [21.7, 38]),
        (15, [29.3, 51]),
    ];

    /// <summary>In A, of the next larger motor of the table; above the table in proportion.</summary>
    /// <param name="watts">At the shaft.</param>
    /// <param name="volts">Above 0.</param>
    public static double Amperes(double watts, double volts) => UsMotorCurrents.OfTable(watts / 1000, volts, Volts, Rows, SameRow);
}
