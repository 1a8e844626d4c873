namespace Floorplan.Language.Quantities;

/// <summary>The units that plans are written in, as people read them, and which plans keep them.</summary>
internal static class WrittenUnits
{
    private static readonly Dictionary<string, string> ForPeople = new()
    {
        ["l"] = "L",
        ["m3"] = "m³",
        ["m2"] = "m²",
        ["ft3"] = "cu ft",
        ["ft2"] = "sq ft",
        ["m3/h"] = "m³/h",
        ["C"] = "°C",
        ["F"] = "°F",
        ["lx"] = "lux",
        ["sec"] = "s",
    };

    private static readonly HashSet<string> Metric =
        ["L", "l", "mL", "m3", "L/min", "L/h", "L/s", "m3/h", "kg", "g", "t", "C", "lux", "lx", "m2", "bar", "kPa", "m/s", "km/h"];

    private static readonly HashSet<string> Feet =
        ["gal", "ft3", "gpm", "gal/min", "gal/h", "cfm", "lb", "oz", "F", "Btu/h", "fc", "ft2", "psi", "ft/s", "mph"];

    /// <summary><c>m²</c> for <c>m2</c>.</summary>
    public static string Symbol(string written) => ForPeople.GetValueOrDefault(written, written);

    /// <summary>Units of time, of electricity and of things counted belong everywhere.</summary>
    public static bool BelongsTo(string written, UnitSystem units) => !(units == UnitSystem.Metric ? Feet : Metric).Contains(written);
}
