using Floorplan.Language.Quantities;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>Scales that rulers carry.</summary>
internal static class RulerScales
{
    /// <summary>ISO 5455, with 1:25; and 3", 1 1/2", 1", 3/4", 1/2", 3/8", 1/4", 3/16" and 1/8" to the foot.</summary>
    private static readonly double[] Metric = [5, 10, 20, 25, 50, 100];
    private static readonly double[] Feet = [4, 8, 12, 16, 24, 32, 48, 64, 96];

    public static IReadOnlyList<double> Of(UnitSystem units) => units == UnitSystem.Metric ? Metric : Feet;
}
