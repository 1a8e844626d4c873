using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Tables;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>Device, cable and drop by the IEC way: PVC cable of several cores in a pipe on the wall.</summary>
internal sealed class IecCircuit(Workings workings, AirAround air)
{
    /// <summary>Of a socket circuit that says no rating, in A; common practice, no source.</summary>
    private const double LeastWithSockets = 16;

    /// <summary>Of a light circuit, in A; common practice, no source.</summary>
    private const double LeastOfLight = 10;

    /// <summary>Of socket circuits, in mm2; common practice, no source.</summary>
    private const double SocketCable = 2.5;

    private static readonly Source Laid = new(
        "PVC cable of several cores in a pipe on the wall (method B2), each circuit in its own", Origin.OwnAssumption);

    public SizedCircuit Sized(SizedCircuit circuit, bool hasSockets)
    {
        double full = circuit.Current.Value;
        bool enough = circuit.SaidBreaker is { } said && full <= said.Value * (1 + 1e-9);
        double least = Math.Max(full, hasSockets ? LeastWithSockets : circuit.IsLight ? LeastOfLight : 0);
        double? rating = enough ? circuit.SaidBreaker!.Value : BreakerSizes.NextUp(BreakerSizes.Iec, least);
        var breaker = enough ? circuit.SaidBreaker : rating is { } amperes
            ? workings.Of(
                "breaker", circuit.Of, amperes, Measure.Current,
                "current of the circuit, next rating up; light at least 10 A, sockets at least 16 A",
                workings.Fine(full, Measure.Current), PowerSources.IecDevice, FigureInput.Of(circuit.Current),
                FigureInput.Taken("usual ratings", "6 A and up", BreakerSizes.IecSource))
            : null;
        double factor = IecFactors.OfAmbient(air.Celsius);
        if (breaker is null
            || IecConductor.Smallest(breaker.Value, IecMethod.B2, circuit.Phases, factor, hasSockets ? SocketCable : 0) is not { } cable)
        {
            return circuit with { Breaker = breaker };
        }

        double carries = IecConductor.Carries(cable, IecMethod.B2, circuit.Phases, factor);
        var wire = workings.Of(
            "conductor", circuit.Of, cable.SquareMillimetres / 1e6, QuantityKind.Area,
            Name(cable),
            "smallest cable that carries the rating of the breaker: table x factor for the air x factor for cables beside it",
            $"{breaker.Text} <= {workings.Fine(cable.Carries(IecMethod.B2, circuit.Phases), Measure.Current)} x "
                + $"{QuantityText.Plain(factor)} x 1 = {workings.Text(carries, Measure.Current)}",
            IecCable.Ampacity, FigureInput.Of(circuit.Current), FigureInput.Of(breaker), air.Input,
            FigureInput.Taken("factor for the air", QuantityText.Plain(factor), IecFactors.Ambient),
            FigureInput.Taken("factor for cables beside it", "1", IecFactors.Group), FigureInput.Taken("laid", "B2", Laid));
        return circuit with
        {
            Breaker = breaker,
            Conductor = wire,
            Drop = Drop(circuit, cable, wire),
            Larger =
            [
                .. IecCable.All.Where(c => c.SquareMillimetres > cable.SquareMillimetres && circuit.Length is not null)
                    .Select(c => (Name(c), Volts(circuit, c) / circuit.Volts)),
            ],
        };
    }

    private static string Name(IecCable cable) => QuantityText.Plain(cable.SquareMillimetres, 1) + " mm²";

    private static double Volts(SizedCircuit circuit, IecCable cable) => VoltageDrop.ByMillivolts(
        VoltageDrop.Millivolts(cable, circuit.Phases), circuit.Current.Value, circuit.Length!.Value / 1000);

    private Figure? Drop(SizedCircuit circuit, IecCable cable, Figure wire)
    {
        bool ofTable = (circuit.Phases == 3 ? cable.MillivoltsThree : cable.MillivoltsTwo) is not null;
        return circuit.Length is null ? null : CircuitDrop.Of(
            circuit, Volts(circuit, cable), "A x mV for each A and m x length / volts",
            QuantityText.Plain(VoltageDrop.Millivolts(cable, circuit.Phases), 3) + " mV/(A m)",
            ofTable ? IecCable.Drop : VoltageDrop.IecSource, wire, workings);
    }
}
