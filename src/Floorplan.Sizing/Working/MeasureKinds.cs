using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Working;

/// <summary>What kind of quantity a printed measure is.</summary>
internal static class MeasureKinds
{
    public static QuantityKind Kind(this Measure measure) => measure switch
    {
        Measure.Area => QuantityKind.Area,
        Measure.Volume or Measure.Liquid => QuantityKind.Volume,
        Measure.Flow => QuantityKind.Flow,
        Measure.AirFlow => QuantityKind.AirFlow,
        Measure.AirChanges or Measure.MassFlow => QuantityKind.Rate,
        Measure.Mass or Measure.LineLoad or Measure.FloorLoad or Measure.Density => QuantityKind.Mass,
        Measure.Temperature or Measure.TemperatureDifference => QuantityKind.Temperature,
        Measure.Power or Measure.ApparentPower or Measure.Heat => QuantityKind.Power,
        Measure.Energy => QuantityKind.Energy,
        Measure.Voltage => QuantityKind.Voltage,
        Measure.Current => QuantityKind.Current,
        Measure.Illuminance => QuantityKind.Illuminance,
        Measure.LuminousFlux => QuantityKind.LuminousFlux,
        Measure.Pressure or Measure.SurfacePressure => QuantityKind.Pressure,
        Measure.Speed or Measure.WindSpeed => QuantityKind.Speed,
        Measure.Force => QuantityKind.Force,
        _ => QuantityKind.Ratio,
    };
}
