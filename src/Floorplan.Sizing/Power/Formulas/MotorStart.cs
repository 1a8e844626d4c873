using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Formulas;

/// <summary>What the start of a motor does to a generator.</summary>
internal static class MotorStart
{
    /// <summary>Start current of a motor switched straight on, in full-load currents.</summary>
    public const double DirectOn = 6;

    /// <summary>Transient reactance of a small generator, per unit, where its plate does not say.</summary>
    public const double Reactance = 0.15;

    /// <summary>A deeper dip lets contactors drop out.</summary>
    public const double DeepestDip = 0.30;

    public static readonly Source StartSource = new(
        "start straight on: 6 times the full-load current, for 5 s; appendix of a maker of drives", Origin.FoundInPublicCopy);

    public static readonly Source DipSource = new(
        "dip = z / (1 + z), z = start kVA / generator kVA x transient reactance, taken as 0.15", Origin.OwnAssumption);

    /// <summary>From 0 to 1: what of the voltage is lost when the motor starts.</summary>
    /// <param name="start">kVA of the start.</param>
    /// <param name="generator">kVA; above 0.</param>
    public static double Dip(double start, double generator, double reactance = Reactance)
    {
        double z = start / generator * reactance;
        return z / (1 + z);
    }

    /// <summary>In kVA: the smallest generator that dips no deeper.</summary>
    public static double SmallestFor(double start, double deepest = DeepestDip, double reactance = Reactance)
        => start * reactance * (1 - deepest) / deepest;
}
