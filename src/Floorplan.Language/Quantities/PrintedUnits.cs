namespace Floorplan.Language.Quantities;

/// <summary>The one table of how each measure is printed in metric plans and in feet plans.</summary>
public static class PrintedUnits
{
    private const double Litre = 0.001;
    private const double Minute = 60;
    private const double Hour = 3600;
    private const double Kilo = 1000;
    private const double Foot = InchPound.MillimetresPerFoot / 1000;
    private const double Pound = InchPound.KilogramsPerPound;
    private const double Gallon = InchPound.CubicMetresPerGallon;
    private const double SquareFoot = InchPound.SquareMetresPerSquareFoot;

    /// <summary>Each measure with its unit in metric plans and in feet plans; electricians everywhere use the same.</summary>
    private static readonly Dictionary<Measure, (PrintedUnit Metric, PrintedUnit Feet)> Table = new()
    {
        [Measure.Area] = (new("m²", "m2", 1, 1), new("sq ft", "ft2", SquareFoot, 0)),
        [Measure.Volume] = (new("m³", "m3", 1, 1), new("cu ft", "ft3", InchPound.CubicMetresPerCubicFoot, 0)),
        [Measure.Liquid] = (new("L", "L", Litre, 1), new("gal", "gal", Gallon, 1)),
        [Measure.Flow] = (new("L/min", "L/min", Litre / Minute, 1), new("gpm", "gpm", Gallon / Minute, 2)),
        [Measure.AirFlow] = (new("m³/h", "m3/h", 1 / Hour, 0), new("cfm", "cfm", InchPound.CubicMetresPerSecondOfCubicFootPerMinute, 0)),
        [Measure.AirChanges] = Everywhere(new("changes/h", "changes/h", 1 / Hour, 1)),
        [Measure.Mass] = (new("kg", "kg", 1, 1), new("lb", "lb", Pound, 1)),
        [Measure.MassFlow] = (new("kg/h", null, 1 / Hour, 1), new("lb/h", null, Pound / Hour, 1)),
        [Measure.LineLoad] = (new("kg/m", null, 1, 1), new("lb/ft", null, Pound / Foot, 1)),
        [Measure.FloorLoad] = (new("kg/m²", null, 1, 0), new("lb/sq ft", null, Pound / SquareFoot, 0)),
        [Measure.Density] = (new("kg/m³", null, 1, 1), new("lb/cu ft", null, Pound / InchPound.CubicMetresPerCubicFoot, 1)),
        [Measure.Temperature] = (new("°C", "C", 1, 1), new("°F", "F", 1 / 1.8, 1, Zero: 32)),
        [Measure.TemperatureDifference] = (new("K", null, 1, 1), new("°F", null, 1 / 1.8, 1)),
        [Measure.Power] = Everywhere(new("kW", "kW", Kilo, 2)),
        [Measure.ApparentPower] = Everywhere(new("kVA", null, Kilo, 2)),
        [Measure.Heat] = (new("kW", "kW", Kilo, 2), new("Btu/h", "Btu/h", InchPound.WattsPerBtuPerHour, 0)),
        [Measure.Energy] = Everywhere(new("kWh", null, Kilo * Hour, 1)),
        [Measure.Voltage] = Everywhere(new("V", "V", 1, 0)),
        [Measure.Current] = Everywhere(new("A", "A", 1, 1)),
        [Measure.Illuminance] = (new("lux", "lux", 1, 0), new("fc", "fc", 1 / SquareFoot, 1)),
        [Measure.LuminousFlux] = Everywhere(new("lm", "lm", 1, 0)),
        [Measure.Pressure] = (new("bar", "bar", 100_000, 2), new("psi", "psi", InchPound.PascalsPerPoundPerSquareInch, 1)),
        [Measure.SurfacePressure] = (new("kPa", null, Kilo, 2), new("lb/sq ft", null, InchPound.PascalsPerPoundPerSquareInch / 144, 1)),
        [Measure.WindSpeed] = (new("m/s", "m/s", 1, 1), new("mph", "mph", InchPound.MetresPerSecondOfMilePerHour, 0)),
        [Measure.Force] = (new("kN", null, Kilo, 2), new("lbf", null, Pound * 9.80665, 0)),
        [Measure.Speed] = (new("m/s", "m/s", 1, 2), new("ft/s", "ft/s", Foot, 1)),
        [Measure.Ratio] = Everywhere(new("%", "%", 0.01, 2)),
    };

    public static PrintedUnit Of(Measure measure, UnitSystem units)
        => units == UnitSystem.Metric ? Table[measure].Metric : Table[measure].Feet;

    private static (PrintedUnit Metric, PrintedUnit Feet) Everywhere(PrintedUnit unit) => (unit, unit);
}
