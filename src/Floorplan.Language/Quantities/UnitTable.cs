using System.Collections.Frozen;

namespace Floorplan.Language.Quantities;

/// <summary>The units that the language knows, besides those of length. Factors come from UnitsNet, on first use of each unit.</summary>
public static class UnitTable
{
    private const double BtuPerHourInWatts = 1055.05585262 / 3600;

    private static readonly FrozenDictionary<string, Unit> Known = new Unit[]
    {
        new("L", QuantityKind.Volume, x => UnitsNet.Volume.FromLiters(x).CubicMeters),
        new("l", QuantityKind.Volume, x => UnitsNet.Volume.FromLiters(x).CubicMeters),
        new("mL", QuantityKind.Volume, x => UnitsNet.Volume.FromMilliliters(x).CubicMeters),
        new("m3", QuantityKind.Volume, x => x),
        new("gal", QuantityKind.Volume, x => UnitsNet.Volume.FromUsGallons(x).CubicMeters),
        new("L/min", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromLitersPerMinute(x).CubicMetersPerSecond),
        new("L/h", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromLitersPerHour(x).CubicMetersPerSecond),
        new("L/s", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromLitersPerSecond(x).CubicMetersPerSecond),
        new("m3/h", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromCubicMetersPerHour(x).CubicMetersPerSecond),
        new("gpm", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromUsGallonsPerMinute(x).CubicMetersPerSecond),
        new("gal/min", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromUsGallonsPerMinute(x).CubicMetersPerSecond),
        new("gal/h", QuantityKind.Flow, x => UnitsNet.VolumeFlow.FromUsGallonsPerHour(x).CubicMetersPerSecond),
        new("cfm", QuantityKind.AirFlow, x => UnitsNet.VolumeFlow.FromCubicFeetPerMinute(x).CubicMetersPerSecond),
        new("s", QuantityKind.Time, x => x),
        new("sec", QuantityKind.Time, x => x),
        new("min", QuantityKind.Time, x => x * 60),
        new("h", QuantityKind.Time, x => x * 3600),
        new("kg", QuantityKind.Mass, x => x),
        new("g", QuantityKind.Mass, x => x / 1000),
        new("lb", QuantityKind.Mass, x => UnitsNet.Mass.FromPounds(x).Kilograms),
        new("oz", QuantityKind.Mass, x => UnitsNet.Mass.FromOunces(x).Kilograms),
        new("t", QuantityKind.Mass, x => x * 1000),
        new("C", QuantityKind.Temperature, x => x),
        new("F", QuantityKind.Temperature, x => UnitsNet.Temperature.FromDegreesFahrenheit(x).DegreesCelsius),
        new("W", QuantityKind.Power, x => x),
        new("kW", QuantityKind.Power, x => x * 1000),
        new("hp", QuantityKind.Power, x => (double)UnitsNet.Power.FromMechanicalHorsepower((decimal)x).Watts),
        new("Btu/h", QuantityKind.Power, x => x * BtuPerHourInWatts),
        new("V", QuantityKind.Voltage, x => x),
        new("A", QuantityKind.Current, x => x),
        new("lux", QuantityKind.Illuminance, x => x),
        new("lx", QuantityKind.Illuminance, x => x),
        new("fc", QuantityKind.Illuminance, x => x * LuxPerFootCandle),
        new("%", QuantityKind.Ratio, x => x / 100),
        new("m2", QuantityKind.Area, x => x),
        new("ft2", QuantityKind.Area, x => UnitsNet.Area.FromSquareFeet(x).SquareMeters),
        new("bar", QuantityKind.Pressure, x => UnitsNet.Pressure.FromBars(x).Pascals),
        new("kPa", QuantityKind.Pressure, x => x * 1000),
        new("psi", QuantityKind.Pressure, x => UnitsNet.Pressure.FromPoundsForcePerSquareInch(x).Pascals),
        new("m/s", QuantityKind.Speed, x => x),
    }.ToFrozenDictionary(u => u.Symbol);

    /// <summary>1 lm/ft2 in lux: 1 / 0.3048 squared.</summary>
    private const double LuxPerFootCandle = 1 / (0.3048 * 0.3048);

    private static readonly FrozenDictionary<string, string> OtherNames = new Dictionary<string, string>
    {
        ["litre"] = "L", ["litres"] = "L", ["liter"] = "L", ["liters"] = "L", ["gallon"] = "gal", ["gallons"] = "gal", ["lpm"] = "L/min",
        ["hour"] = "h", ["hours"] = "h", ["hr"] = "h", ["minute"] = "min", ["minutes"] = "min", ["mins"] = "min", ["second"] = "s",
        ["seconds"] = "s", ["secs"] = "s", ["lbs"] = "lb", ["pounds"] = "lb", ["KW"] = "kW", ["kw"] = "kW", ["HP"] = "hp", ["amp"] = "A", ["amps"] = "A",
        ["volt"] = "V", ["volts"] = "V", ["watts"] = "W", ["percent"] = "%", ["Lux"] = "lux", ["GPM"] = "gpm", ["CFM"] = "cfm", ["PSI"] = "psi",
        ["degrees"] = "degrees",
    }.ToFrozenDictionary();

    private static readonly FrozenSet<string> Times = new[] { "h", "min", "s", "day", "d", "hour", "week", "year" }.ToFrozenSet();

    public static IEnumerable<string> Symbols => Known.Keys;

    /// <summary>A unit by its symbol or a usual other name; null when unknown.</summary>
    public static Unit? Find(string symbol) => Known.GetValueOrDefault(OtherNames.GetValueOrDefault(symbol, symbol));

    /// <summary>A rate of something counted, such as <c>fish/h</c>; null when the second half is no time.</summary>
    public static Unit? Rate(string symbol)
    {
        int slash = symbol.LastIndexOf('/');
        if (slash <= 0 || !Times.Contains(symbol[(slash + 1)..]))
        {
            return null;
        }

        double seconds = symbol[(slash + 1)..] switch
        {
            "s" => 1,
            "min" => 60,
            "h" or "hour" => 3600,
            "day" or "d" => 86_400,
            "week" => 604_800,
            _ => 31_557_600,
        };
        return new Unit(symbol, QuantityKind.Rate, x => x / seconds);
    }

    /// <summary>Things counted, such as <c>fish</c> or <c>shelves</c>; the empty symbol is a bare number.</summary>
    public static Unit Count(string symbol) => new(symbol, QuantityKind.Count, x => x);

    /// <summary>For sentences: the units of one kind.</summary>
    public static string Examples(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "mm, cm, m, in, ft",
        QuantityKind.Rate => "fish/h, birds/min",
        QuantityKind.Count => "fish, crates",
        _ => string.Join(", ", Known.Values.Where(u => u.Kind == kind && u.Symbol is not ("l" or "lx" or "sec")).Select(u => u.Symbol).Order(StringComparer.Ordinal)),
    };
}
