using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Rooms;

/// <summary>The lamps that a room says it has.</summary>
/// <param name="Flux">Light that one gives.</param>
/// <param name="Power">What one draws; null when not said.</param>
public sealed record SaidLamps(int Count, Quantity Flux, Quantity? Power)
{
    /// <summary>As a plan writes it: <c>6 x 4000 lm 0.04 kW</c>.</summary>
    public string Print(UnitSystem units)
        => $"{QuantityText.Plain(Count, 0)} x {QuantityText.Of(Flux, units)}"
            + (Power is { } power ? " " + QuantityText.Of(power.Base, Measure.Power, units) : "");

    internal static SaidLamps Of(LampsSyntax lamps) => new(lamps.Count, lamps.Flux.Value, lamps.Power?.Value);
}
