using Floorplan.Sizing.Weights.Crane;

namespace Floorplan.Sizing.Ground;

/// <summary>A box that is only set down, in wind on its long side: statics, no factors of a code in it.</summary>
internal static class SetDownBox
{
    /// <summary>Weight against wind about the lee edge; below 1 it falls over.</summary>
    /// <param name="kilograms">The lightest that it is.</param>
    /// <param name="lever">From the lee edge to its weight, m.</param>
    /// <param name="force">Of the wind, N.</param>
    /// <param name="height">Of the box, m; the wind acts at half of it.</param>
    public static double Overturning(double kilograms, double lever, double force, double height)
        => kilograms * SlingLegs.Gravity * lever / (force * height / 2);

    /// <summary>Friction that keeps it from sliding, force over weight.</summary>
    public static double Friction(double kilograms, double force) => force / (kilograms * SlingLegs.Gravity);

    /// <summary>Pull down along the windward edge that brings the overturning ratio to <paramref name="ratio"/>, N.</summary>
    /// <param name="width">From edge to edge, m.</param>
    public static double HoldDown(double kilograms, double lever, double force, double height, double width, double ratio)
        => Math.Max(0, ((ratio * force * height / 2) - (kilograms * SlingLegs.Gravity * lever)) / width);

    /// <summary>Pull level that brings the sliding ratio to <paramref name="ratio"/>, N.</summary>
    public static double HoldStill(double kilograms, double force, double friction, double ratio)
        => Math.Max(0, (ratio * force) - (friction * kilograms * SlingLegs.Gravity));
}
