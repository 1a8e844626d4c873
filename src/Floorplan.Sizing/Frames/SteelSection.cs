using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;

namespace Floorplan.Sizing.Frames;

/// <summary>A bar of structural steel: square or rectangular tube, or angle.</summary>
/// <param name="Face">Side that shows from outside.</param>
/// <param name="Depth">Side through the wall.</param>
public sealed record SteelSection(FrameForm Form, Length Face, Length Depth, Length Thickness)
{
    /// <summary>Steel, in kg/m³ (EN 10219-2 and EN 10056-1 count with it).</summary>
    public const double Density = 7850;

    /// <summary>50 x 50 x 3 mm tube, or 2 x 2 x 1/8 in; own assumption.</summary>
    public static SteelSection Usual(UnitSystem units) => units == UnitSystem.Metric
        ? new(FrameForm.Tube, Length.FromMillimetres(50), Length.FromMillimetres(50), Length.FromMillimetres(3))
        : new(FrameForm.Tube, Length.FromInches(2), Length.FromInches(2), Length.FromInches(0.125));

    /// <summary>Cross-section in mm², with the rounded corners of the standards.</summary>
    public double Area
    {
        get
        {
            double b = Face.Millimetres;
            double h = Depth.Millimetres;
            double t = Thickness.Millimetres;
            return Form switch
            {
                // EN 10219-2: corners of 2 t outside and t inside up to 6 mm.
                FrameForm.Tube => (2 * t * (b + h - (2 * t))) - ((4 - Math.PI) * ((2 * t * 2 * t) - (t * t))),

                // EN 10056-1: root radius and toe radii (half of it) left out, which is under 2 %.
                FrameForm.Angle => t * (b + h - t),
                _ => 0,
            };
        }
    }

    /// <summary>In kg/m.</summary>
    public double MassPerMetre => Area * 1e-6 * Density;

    public static SteelSection Of(FrameWish wish) => new(wish.Form, wish.Face, wish.Depth, wish.Thickness);

    /// <summary><c>tube 50 × 50 × 3 mm</c>.</summary>
    public string Name(UnitSystem units) => $"{Word} {QuantityText.Sizes(units, Face, Depth, Thickness)}";

    private string Word => Form == FrameForm.Tube ? "tube" : "angle";
}
