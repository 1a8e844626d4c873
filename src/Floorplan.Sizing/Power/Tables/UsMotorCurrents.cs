using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>
/// What a motor draws at full load, by its horsepower. A code's table, not the shaft power: a motor of 1.5 hp draws 10 A at 230 V, which
/// is twice what 1.12 kW of heat would.
/// </summary>
internal static class UsMotorCurrents
{
    public static readonly Source SinglePhase = new(
        "NEC Table 430.248, single-phase motors (same numbers since 1999)", Origin.FoundInSecondaryCopy, Force.ModelCode);

    public static readonly Source ThreePhase = new(
        "NEC Table 430.250, three-phase motors, 2008", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>A motor this much over a row of a table is still of that row: 1.12 kW is 1.5 hp.</summary>
    private const double SameRow = 1.01;

    private static readonly double[] SingleVolts = [115, 200, 208, 230];

    private static readonly (double Hp, double[] Amperes)[] Single =
    [
        (1 / 6.0, [4.4, 2.5, 2.4, 2.2]),
        (1 / 4.0, [5.8, 3.3, 3.2, 2.9]),
        (1 / 3.0, [7.2, 4.1, 4.0, 3.6]),
        (1 / 2.0, [9.8, 5.6, 5.4, 4.9]),
        (3 / 4.0, [13.8, 7.9, 7.6, 6.9]),
        (1, [16, 9.2, 8.8, 8.0]),
        (1.5, [20, 11.5, 11.0, 10]),
        (2, [24, 13.8, 13.2, 12]),
        (3, [34, 19.6, 18.7, 17]),
        (5, [56, 32.2, 30.8, 28]),
        (7.5, [80, 46, 44, 40]),
        (10, [100, 57.5, 55, 50]),
    ];

    private static readonly double[] ThreeVolts = [208, 230];

    private static readonly (double Hp, double[] Amperes)[] Three =
    [
        (1 / 2.0, [2.4, 2.2]),
        (3 / 4.0, [3.5, 3.2]),
        (1, [4.6, 4.2]),
        (1.5, [6.6, 6.0]),
        (2, [7.5, 6.8]),
        (3, [10.6, 9.6]),
        (5, [16.7, 15.2]),
        (7.5, [24.2, 22]),
        (10, [30.8, 28]),
        (15, [46.2, 42]),
    ];

    public static Source Source(int phases) => phases == 3 ? ThreePhase : SinglePhase;

    /// <summary>
    /// In A, of the next larger motor of the table; above the table in proportion. A voltage between the columns is taken in proportion
    /// from the nearest one, since a motor draws the same power.
    /// </summary>
    /// <param name="volts">Above 0.</param>
    public static double Amperes(double horsepower, double volts, int phases)
    {
        var (columns, rows) = phases == 3 ? (ThreeVolts, Three) : (SingleVolts, Single);
        return OfTable(horsepower, volts, columns, rows, SameRow);
    }

    internal static double OfTable(double power, double volts, double[] columns, (double Power, double[] Amperes)[] rows, double sameRow)
    {
        if (power <= 0)
        {
            return 0;
        }

        // A supply is named 220, 230 or 240 V and is the same one: within a tenth the column holds as it is printed.
        int column = Array.IndexOf(columns, columns.MinBy(c => Math.Abs(Math.Log(c / volts))));
        double turned = Math.Abs(columns[column] - volts) <= 0.1 * columns[column] ? 1 : columns[column] / volts;
        int row = Array.FindIndex(rows, r => power <= r.Power * sameRow);
        double amperes = row >= 0 ? rows[row].Amperes[column] : rows[^1].Amperes[column] * power / rows[^1].Power;
        return amperes * turned;
    }
}
