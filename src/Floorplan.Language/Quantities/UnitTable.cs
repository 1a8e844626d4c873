namespace Floorplan.Language.Quantities;

/// <summary>
/// The units that the language knows, besides those of length. Plain factors, because a conversion library costs a cold
/// command a fifth of a second; the tests hold each factor against one.
/// </summary>
public static class UnitTable
{
    // Exact by definition: NIST Special Publication 811 (2008), appendix B, unless said otherwise.
    private const double Litre = 0.001;
    private const double UsGallon = InchPound.CubicMetresPerGallon;
    private const double Foot = 0.3048;
    private const double Pound = InchPound.KilogramsPerPound;
    private const double Ounce = Pound / 16;
    private const double StandardGravity = 9.80665;
    private const double MechanicalHorsepower = 550 * Foot * Pound * StandardGravity;
    private const double Minute = 60;
    private const double Hour = 3600;
    private const double Day = 24 * Hour;

    /// <summary>A Julian year of 365.25 days.</summary>
    private const double Year = 365.25 * Day;

    private static readonly Unit[] All =
    [
        .. Scaled(
            QuantityKind.Volume, ("L", Litre), ("l", Litre), ("mL", Litre / 1000), ("m3", 1), ("gal", UsGallon),
            ("ft3", Foot * Foot * Foot)),
        .. Scaled(QuantityKind.Flow, ("L/min", Litre / Minute), ("L/h", Litre / Hour), ("L/s", Litre), ("m3/h", 1 / Hour)),
        .. Scaled(QuantityKind.Flow, ("gpm", UsGallon / Minute), ("gal/min", UsGallon / Minute), ("gal/h", UsGallon / Hour)),
        .. Scaled(QuantityKind.AirFlow, ("cfm", Foot * Foot * Foot / Minute)),
        .. Scaled(QuantityKind.Time, ("s", 1), ("sec", 1), ("min", Minute), ("h", Hour)),
        .. Scaled(QuantityKind.Mass, ("kg", 1), ("g", 0.001), ("lb", Pound), ("oz", Ounce), ("t", 1000)),
        new("C", QuantityKind.Temperature, x => x),
        new("F", QuantityKind.Temperature, InchPound.Celsius),
        .. Scaled(QuantityKind.Power, ("W", 1), ("kW", 1000), ("hp", MechanicalHorsepower), ("Btu/h", InchPound.WattsPerBtuPerHour)),
        .. Scaled(QuantityKind.Voltage, ("V", 1)),
        .. Scaled(QuantityKind.Current, ("A", 1)),
        .. Scaled(QuantityKind.Illuminance, ("lux", 1), ("lx", 1), ("fc", 1 / (Foot * Foot))),
        .. Scaled(QuantityKind.LuminousFlux, ("lm", 1)),
        .. Scaled(QuantityKind.Ratio, ("%", 0.01)),
        .. Scaled(QuantityKind.Area, ("m2", 1), ("ft2", Foot * Foot)),
        .. Scaled(QuantityKind.Pressure, ("bar", 100_000), ("kPa", 1000), ("psi", InchPound.PascalsPerPoundPerSquareInch)),
        .. Scaled(
            QuantityKind.Speed, ("m/s", 1), ("km/h", 1 / 3.6), ("ft/s", Foot), ("mph", InchPound.MetresPerSecondOfMilePerHour)),
    ];

    private static readonly Dictionary<string, Unit> Known = All.ToDictionary(u => u.Symbol);

    private static readonly Dictionary<string, string> OtherNames = new()
    {
        ["m³"] = "m3",
        ["m²"] = "m2",
        ["ft²"] = "ft2",
        ["ft³"] = "ft3",
        ["m³/h"] = "m3/h",
        ["litre"] = "L",
        ["litres"] = "L",
        ["liter"] = "L",
        ["liters"] = "L",
        ["gallon"] = "gal",
        ["gallons"] = "gal",
        ["lpm"] = "L/min",
        ["l/min"] = "L/min",
        ["l/h"] = "L/h",
        ["l/s"] = "L/s",
        ["GPM"] = "gpm",
        ["CFM"] = "cfm",
        ["hour"] = "h",
        ["hours"] = "h",
        ["hr"] = "h",
        ["minute"] = "min",
        ["minutes"] = "min",
        ["mins"] = "min",
        ["second"] = "s",
        ["seconds"] = "s",
        ["secs"] = "s",
        ["lbs"] = "lb",
        ["pounds"] = "lb",
        ["KW"] = "kW",
        ["kw"] = "kW",
        ["HP"] = "hp",
        ["amp"] = "A",
        ["amps"] = "A",
        ["volt"] = "V",
        ["volts"] = "V",
        ["watts"] = "W",
        ["percent"] = "%",
        ["Lux"] = "lux",
        ["PSI"] = "psi",
    };

    /// <summary>Every unit that is not of length and not counted in things.</summary>
    public static IReadOnlyList<Unit> Units => All;

    /// <summary>The units of one kind; none for counts and rates, whose units the plan's product names.</summary>
    public static IEnumerable<string> SymbolsOf(QuantityKind kind) => All.Where(u => u.Kind == kind).Select(u => u.Symbol);

    /// <summary>A unit by its symbol or a usual other name; null when unknown.</summary>
    public static Unit? Find(string symbol) => Known.GetValueOrDefault(OtherNames.GetValueOrDefault(symbol, symbol));

    /// <summary>A rate of something counted, such as <c>fish/h</c>; null when the second half is no time.</summary>
    public static Unit? Rate(string symbol)
    {
        int slash = symbol.LastIndexOf('/');
        return slash > 0 && Seconds(symbol.AsSpan(slash + 1)) is { } seconds ? new Unit(symbol, QuantityKind.Rate, x => x / seconds) : null;
    }

    /// <summary>Things counted, such as <c>fish</c> or <c>shelves</c>; the empty symbol is a bare number.</summary>
    public static Unit Count(string symbol) => new(symbol, QuantityKind.Count, x => x);

    /// <summary>For sentences: the units of one kind.</summary>
    public static string Examples(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "mm, cm, m, in, ft",
        QuantityKind.Rate => "fish/h, birds/min",
        QuantityKind.Count => "fish, crates",
        _ => string.Join(", ", SymbolsOf(kind).Where(s => s is not ("l" or "lx" or "sec")).Order(StringComparer.Ordinal)),
    };

    private static Unit[] Scaled(QuantityKind kind, params (string Symbol, double Factor)[] units) =>
        Array.ConvertAll(units, u => new Unit(u.Symbol, kind, x => x * u.Factor));

    private static double? Seconds(ReadOnlySpan<char> time) => time switch
    {
        "s" => 1,
        "min" => Minute,
        "h" or "hour" => Hour,
        "day" or "d" => Day,
        "week" => 7 * Day,
        "year" => Year,
        _ => null,
    };
}
