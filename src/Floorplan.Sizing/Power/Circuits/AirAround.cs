using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>How warm the air around cables is: the summer day of the plan, never cooler than the tables' 30 C.</summary>
internal sealed record AirAround(double Celsius, FigureInput Input)
{
    private const double OfTables = 30;

    private static readonly Source Own = new("air of 30 C around cables, as the tables have it", Origin.OwnAssumption);

    public static AirAround Of(Plan plan, UnitSystem units)
        => plan.Head.Climate is { Summer: { } summer } climate && summer.Base > OfTables
            ? new AirAround(summer.Base, FigureInput.Said("air around the cable", QuantityText.Of(summer, units), climate.Span))
            : new AirAround(
                OfTables, FigureInput.Taken("air around the cable", QuantityText.Of(OfTables, Measure.Temperature, units), Own));
}
