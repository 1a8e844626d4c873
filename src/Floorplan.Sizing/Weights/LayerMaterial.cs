using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>What a lining, a floor build-up or a partition is made of, as far as that weighs something.</summary>
/// <param name="Name">For the working: <c>sandwich panel</c>.</param>
/// <param name="Faces">Boards or sheets on it, both sides together, in kg/m2; zero for what is solid.</param>
/// <param name="FacesThick">Their thickness together, in mm.</param>
/// <param name="Density">Of what lies between the faces, or of the whole where it is solid, in kg/m3.</param>
public sealed record LayerMaterial(string Name, double Faces, double FacesThick, double Density, Source Source)
{
    /// <summary>What one square metre weighs, in kg; a layer thinner than its faces is all face.</summary>
    public double PerSquareMetre(Length thickness) =>
        FacesThick > thickness.Millimetres ? Faces * thickness.Millimetres / FacesThick : Faces + (Density * Core(thickness) / 1000);

    /// <summary>What lies between the faces, in mm.</summary>
    public double Core(Length thickness) => Math.Max(0, thickness.Millimetres - FacesThick);
}
