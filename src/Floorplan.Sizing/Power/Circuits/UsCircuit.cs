using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Power.Tables;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>Breaker, conductor and drop by US practice. Every load is taken as continuous, since a line runs for hours.</summary>
internal sealed class UsCircuit(Workings workings, AirAround air)
{
    /// <summary>Of an outlet circuit where the outlet says no rating, in A; common practice, no source.</summary>
    private const double LeastWithOutlets = 20;

    private const double MillimetresPerFoot = 304.8;

    private static readonly Source Alone = new("each circuit in its own pipe or cable", Origin.OwnAssumption);

    public SizedCircuit Sized(SizedCircuit circuit, bool hasOutlets)
    {
        var motors = circuit.Loads.Where(l => l.Kind == PowerLoadKind.Motor).ToList();
        bool motorAlone = motors.Count == 1 && circuit.Loads.Count == 1 && !hasOutlets;
        double full = circuit.Current.Value;
        double needed = full * UsConductor.Continuous;
        double largest = motors.Select(m => m.Current.Value).DefaultIfEmpty(0).Max();
        double byRule = largest > 0
            ? (largest * UsConductor.MotorBreaker) + ((full - largest) * UsConductor.Continuous)
            : needed;
        bool enough = circuit.SaidBreaker is { } said && needed <= said.Value * (1 + 1e-9);
        double? rating = enough
            ? circuit.SaidBreaker!.Value
            : BreakerSizes.NextUp(BreakerSizes.Us, hasOutlets ? Math.Max(byRule, LeastWithOutlets) : byRule);
        var breaker = enough ? circuit.SaidBreaker : rating is { } amperes ? Breaker(circuit, amperes, largest, full) : null;
        double factor = UsFactors.OfAmbient(air.Celsius);
        var conductor = UsConductor.For(needed, rating, motorAlone, factor);
        if (breaker is null || conductor is null)
        {
            return circuit with { Breaker = breaker };
        }

        bool warm = Math.Max(needed, motorAlone ? 0 : breaker.Value) > UsConductor.SmallCircuit;
        double carries = UsConductor.Carries(conductor, warm, factor);
        var wire = workings.Of(
            "conductor", circuit.Of, conductor.SquareMillimetres / 1e6, QuantityKind.Area, conductor.Name,
            motorAlone
                ? "smallest copper that carries 1.25 x current; the motor has its own overload device"
                : "smallest copper that carries 1.25 x current and that the breaker guards",
            $"1.25 x {workings.Fine(full, Measure.Current)} = {workings.Text(needed, Measure.Current)}; {conductor.Name} carries "
                + workings.Text(carries, Measure.Current),
            CopperAwg.Ampacity, FigureInput.Of(circuit.Current), FigureInput.Of(breaker), air.Input,
            FigureInput.Taken("factor for the air", QuantityText.Plain(factor), UsFactors.Source),
            FigureInput.Taken("factor for others beside it", "1", Alone),
            FigureInput.Taken("terminals", "60 °C up to 100 A", UsConductor.Terminals),
            FigureInput.Taken("small conductors", "14 AWG 15 A, 12 AWG 20 A, 10 AWG 30 A", CopperAwg.Small));
        return circuit with
        {
            Breaker = breaker,
            Conductor = wire,
            Drop = circuit.Length is null ? null : CircuitDrop.Of(
                circuit, Volts(circuit, conductor), "(2, three-phase 1.732) x A x ohm of a thousand feet x length / volts",
                QuantityText.Plain(conductor.OhmsPerThousandFeet, 4) + " ohm/1000 ft", CopperAwg.Resistance, wire, workings),
            Larger =
            [
                .. CopperAwg.All.Where(c => c.CircularMils > conductor.CircularMils && circuit.Length is not null)
                    .Select(c => (c.Name, Volts(circuit, c) / circuit.Volts)),
            ],
        };
    }

    private Figure Breaker(SizedCircuit circuit, double rating, double largest, double full)
    {
        string current = workings.Fine(full - largest, Measure.Current);
        bool motor = largest > 0;
        string rest = $"1.25 x {current}";
        return workings.Of(
            "breaker", circuit.Of, rating, Measure.Current,
            motor
                ? "2.5 x the largest motor + 1.25 x the rest, next standard rating up; the most that the code lets a motor have"
                : "1.25 x current, next standard rating up, 20 A where outlets say none",
            motor
                ? $"2.5 x {workings.Fine(largest, Measure.Current)}{(full > largest ? " + " + rest : "")}"
                : rest,
            motor ? UsConductor.MotorSource : PowerSources.UsContinuous, FigureInput.Of(circuit.Current),
            FigureInput.Taken("standard ratings", "15 A and up", BreakerSizes.UsSource));
    }

    private static double Volts(SizedCircuit circuit, CopperAwg conductor) => VoltageDrop.ByTable8(
        conductor.OhmsPerThousandFeet, circuit.Current.Value, circuit.Length!.Value / MillimetresPerFoot, circuit.Phases);
}
