namespace Floorplan.Drawing.Conventions;

/// <summary>ISO 3864 colours as sRGB of their RAL numbers (F2). Only for safety signs, never for zones or streams.</summary>
public static class SafetyColours
{
    /// <summary>RAL 3001: prohibition (circle and bar), fire equipment (square).</summary>
    public const string Red = "#9B2423";

    /// <summary>RAL 1003: warning (triangle), with black.</summary>
    public const string Yellow = "#F9A800";

    /// <summary>RAL 5005: mandatory (circle).</summary>
    public const string Blue = "#005387";

    /// <summary>RAL 6032: safe condition (square or rectangle).</summary>
    public const string Green = "#237F52";
}
