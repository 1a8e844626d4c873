namespace Floorplan.Drawing.Lettering;

/// <summary>
/// Advance widths of DejaVu Sans (table hmtx, version 2.37), in the units of
/// <see cref="InterAdvances.UnitsPerEm"/>, rounded up. A test compares every figure with the font where it is installed.
/// </summary>
internal static partial class DejaVuAdvances;
