using Floorplan.Sizing.Power.Tables;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Formulas;

/// <summary>Volts that are lost along a cable, by the ways of both practices.</summary>
internal static class VoltageDrop
{
    /// <summary>Ohm mm2/m of copper at working temperature.</summary>
    public const double Resistivity = 0.0225;

    /// <summary>Ohm/m, where a cable's own is not known; counts only for loads with a phase shift.</summary>
    public const double Reactance = 0.08e-3;

    /// <summary>Ohm and circular mil for each foot of copper; two sources round it to 12.9.</summary>
    public const double CircularMilFoot = 12.9;

    private const double FeetInThousand = 1000;

    public static readonly Source IecSource = new("IEC 60364-5-52, Annex G", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>In V: there and back, or between lines of three-phase power.</summary>
    /// <param name="ohmsPerThousandFeet">Of one conductor.</param>
    public static double ByTable8(double ohmsPerThousandFeet, double amperes, double feet, int phases)
        => Ways(phases) * amperes * ohmsPerThousandFeet * feet / FeetInThousand;

    /// <summary>In V, by the rule of thumb with circular mils.</summary>
    public static double ByCircularMils(double circularMils, double amperes, double feet, int phases)
        => Ways(phases) * CircularMilFoot * amperes * feet / circularMils;

    /// <summary>In V: two ways of a single-phase load, or from one line to the middle of a three-phase one.</summary>
    /// <param name="cosine">Of the phase shift; 1 for heat.</param>
    public static double ByAnnexG(double squareMillimetres, double amperes, double metres, int phases, double cosine)
    {
        double sine = Math.Sqrt(Math.Max(0, 1 - (cosine * cosine)));
        return (phases == 3 ? 1 : 2) * ((Resistivity * metres * cosine / squareMillimetres) + (Reactance * metres * sine)) * amperes;
    }

    /// <summary>In V: there and back, or between lines of three-phase power.</summary>
    /// <param name="ohmsPerKilometre">Of one conductor, warm.</param>
    public static double ByResistance(double ohmsPerKilometre, double amperes, double metres, int phases)
        => Ways(phases) * amperes * ohmsPerKilometre * metres / 1000;

    /// <summary>In mV for each A and m, between lines of three-phase power: by the table, and above it by Annex G.</summary>
    public static double Millivolts(IecCable cable, int phases)
        => (phases == 3 ? cable.MillivoltsThree : cable.MillivoltsTwo)
            ?? 1000 * (phases == 3 ? LineCurrent.Root3 : 1) * ByAnnexG(cable.SquareMillimetres, 1, 1, phases, 1);

    /// <summary>In V, by the table of mV.</summary>
    public static double ByMillivolts(double millivolts, double amperes, double metres) => millivolts * amperes * metres / 1000;

    private static double Ways(int phases) => phases == 3 ? LineCurrent.Root3 : 2;
}
