using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Dimensions;

/// <summary>
/// Rounds places, not distances, to what a dimension prints: 0.1 mm or 1/16 in. Distances between rounded places then always add up
/// as printed, and none is wrong by more than one step.
/// </summary>
public static class DimensionRounding
{
    /// <summary>The smallest step that <see cref="LengthText"/> prints.</summary>
    public static Length Step(UnitSystem units) => units == UnitSystem.Metric
        ? new Length(Length.NanometresPerMillimetre / 10)
        : new Length(Length.NanometresPerInch / 16);

    /// <summary>Half a step goes up.</summary>
    public static Length Round(Length place, UnitSystem units)
    {
        long step = Step(units).Nanometres;
        return new Length((long)Math.Floor((place.Nanometres + (step / 2.0)) / step) * step);
    }
}
