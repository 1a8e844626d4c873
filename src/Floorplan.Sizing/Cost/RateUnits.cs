namespace Floorplan.Sizing.Cost;

/// <summary>The units that rates are counted in, and what they are in the base unit of their kind.</summary>
internal static class RateUnits
{
    private static readonly (RateKind Kind, string[] Names, double Base)[] All =
    [
        (RateKind.Each, ["each", "piece", "pc"], 1),
        (RateKind.Length, ["m"], 1), (RateKind.Length, ["ft"], 0.3048),
        (RateKind.Area, ["m2", "m²"], 1), (RateKind.Area, ["ft2", "sq ft", "ft²"], 0.3048 * 0.3048),
        (RateKind.Mass, ["kg"], 1), (RateKind.Mass, ["lb"], 0.45359237), (RateKind.Mass, ["t"], 1000),
        (RateKind.Volume, ["m3", "m³"], 1), (RateKind.Volume, ["L", "l"], 0.001),
        (RateKind.Volume, ["gal"], 231 * 0.0254 * 0.0254 * 0.0254), (RateKind.Volume, ["1000 gal"], 231 * 25.4 * 25.4 * 25.4 / 1e6),
        (RateKind.Energy, ["kWh"], 3.6e6), (RateKind.Energy, ["MWh"], 3.6e9),
        (RateKind.Time, ["h", "hour"], 3600),
        (RateKind.Yearly, ["year", "years", "a year"], 1),
        (RateKind.Share, ["%"], 0.01),
    ];

    /// <summary>Null for a unit that is not known.</summary>
    public static (RateKind Kind, double Base)? Find(string unit) => All
        .Where(u => u.Names.Any(n => n.Equals(unit, StringComparison.OrdinalIgnoreCase)))
        .Select(u => ((RateKind, double)?)(u.Kind, u.Base)).FirstOrDefault();

    /// <summary>For sentences: <c>m2 or ft2</c>.</summary>
    public static string Of(RateKind kind) => string.Join(" or ", All.Where(u => u.Kind == kind).Select(u => u.Names[0]));
}

internal enum RateKind
{
    Each,
    Length,
    Area,
    Mass,
    Volume,
    Energy,
    Time,
    Yearly,
    Share,
}
