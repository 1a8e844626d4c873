using Floorplan.Language.Quantities;

namespace Floorplan.Model.Space;

/// <summary>Somebody or something that moves over the floor.</summary>
/// <param name="Name">For sentences: <c>a person</c>, <c>a trolley</c>.</param>
/// <param name="WidthMm">Free width that it needs.</param>
/// <param name="HeightMm">Free height that it needs.</param>
public sealed record Mover(string Name, double WidthMm, double HeightMm)
{
    /// <summary>
    /// Stature of a 95th-percentile man 1870 mm (ANSUR II) and shoes of 30 mm (from memory); trolleys are taken as high as who pushes
    /// them.
    /// </summary>
    private const double Upright = 1900;

    /// <summary>Shoulder breadth of a 95th-percentile man, 567 mm (ANSUR II, bideltoid), can turn to pass 450 mm.</summary>
    public static Mover Person { get; } = new("a person", 450, Upright);

    /// <summary>Arms filled: elbow to elbow 667 mm (ANSUR II, 95th-percentile man).</summary>
    public static Mover Carrying { get; } = new("a person carrying", 667, Upright);

    public static Mover Trolley(double widthMm) => new("a trolley", widthMm, Upright) { SaysWidth = true };

    /// <summary>Whether a sentence says how wide it is; people are as wide as they are.</summary>
    public bool SaysWidth { get; init; }

    /// <summary><c>a person</c>, <c>a trolley 600 mm wide</c>.</summary>
    public string Text(UnitSystem units)
        => SaysWidth ? $"{Name} {QuantityText.Length(Length.FromMillimetres(Math.Round(WidthMm)), units)} wide" : Name;
}
