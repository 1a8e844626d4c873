namespace Floorplan.Model.Space;

/// <summary>Somebody or something that moves over the floor.</summary>
/// <param name="Name">For sentences: <c>a person</c>, <c>a trolley 600 mm wide</c>.</param>
/// <param name="WidthMm">Free width that it needs.</param>
/// <param name="HeightMm">Free height that it needs.</param>
public sealed record Mover(string Name, double WidthMm, double HeightMm)
{
    /// <summary>Shoulder breadth of a 95th-percentile man, 567 mm (ANSUR II, bideltoid), can turn to pass 450 mm; stature 1870 mm + shoes 30 mm (shoes from memory).</summary>
    public static Mover Person { get; } = new("a person", 450, 1900);

    /// <summary>Arms filled: elbow to elbow 667 mm (ANSUR II, 95th-percentile man).</summary>
    public static Mover Carrying { get; } = new("a person carrying", 667, 1900);

    public static Mover Trolley(double widthMm) => new(FormattableString.Invariant($"a trolley {widthMm:0} mm wide"), widthMm, 1900);
}
