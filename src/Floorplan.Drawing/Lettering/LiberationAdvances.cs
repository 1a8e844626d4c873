namespace Floorplan.Drawing.Lettering;

/// <summary>
/// Advance widths of Liberation Sans, which has the widths of Arial and Helvetica (table hmtx, version 1.07.4), in the units of
/// <see cref="InterAdvances.UnitsPerEm"/>, rounded up. A test compares every figure with the font where it is installed.
/// </summary>
internal static partial class LiberationAdvances;
