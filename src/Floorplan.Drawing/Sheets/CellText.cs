using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Sheets;

/// <summary>Lengths for table cells.</summary>
internal static class CellText
{
    /// <summary>As dimensions print it, but a number never parts from its fraction at the end of a line.</summary>
    public static string Of(Length length, UnitSystem units) => LengthText.Dimension(length, units).Replace(' ', '\u00A0');
}
