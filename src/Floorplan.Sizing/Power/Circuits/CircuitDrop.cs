using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>The share of the voltage that a circuit loses at its far end, all its loads taken there.</summary>
internal static class CircuitDrop
{
    /// <param name="volts">Lost.</param>
    /// <param name="each">What the cable loses, with its unit.</param>
    public static Figure Of(
        SizedCircuit circuit, double volts, string formula, string each, Source source, Figure wire, Workings workings)
    {
        double share = volts / circuit.Volts;
        string times = circuit.Phases == 3 ? "1.732" : "2";
        string ways = formula.StartsWith('(') ? times + " x " : "";
        string amperes = workings.Fine(circuit.Current.Value, Measure.Current);
        return workings.Of(
            "voltage drop", circuit.Of, share, Measure.Ratio, formula,
            $"{ways}{amperes} x {each} x {circuit.Length!.Text} / {QuantityText.Of(circuit.Volts, Measure.Voltage, workings.Units)}",
            source, FigureInput.Of(circuit.Current), FigureInput.Of(circuit.Length), FigureInput.Of(wire),
            FigureInput.Taken("loss of the cable", each, source));
    }
}
