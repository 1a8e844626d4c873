using Floorplan.Language.Quantities;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>Measures and directions as a builder says them.</summary>
internal static class Say
{
    /// <summary>Nearer than this, in mm, a place is said to be at the wall.</summary>
    private const double AtWall = 1;

    /// <summary>A size or a short distance: <c>1200 mm</c> or <c>3'-11 1/4"</c>; whole millimetres.</summary>
    public static string Size(double millimetres, UnitSystem units) =>
        QuantityText.Length(Length.FromMillimetres(Math.Round(millimetres)), units);

    /// <summary>A size to move by, rounded up as it is printed, so that moving by it is enough.</summary>
    public static string SizeUp(double millimetres, UnitSystem units) =>
        QuantityText.Length(Tape.NoShorter(Length.FromMillimetres(millimetres), units), units);

    /// <summary>Where on the plan, from the origin: <c>4200 mm from the west and 600 mm from the south</c>.</summary>
    public static string Place(Coordinate at, UnitSystem units)
    {
        bool west = Math.Abs(at.X) < AtWall;
        bool south = Math.Abs(at.Y) < AtWall;
        return (west, south) switch
        {
            (true, true) => "the south-west corner",
            (true, false) => $"the west wall, {Size(at.Y, units)} from the south",
            (false, true) => $"the south wall, {Size(at.X, units)} from the west",
            _ => $"{Size(at.X, units)} from the west and {Size(at.Y, units)} from the south",
        };
    }

    /// <summary>The compass word for a step along one axis.</summary>
    public static string Heading(double dx, double dy) =>
        Math.Abs(dx) >= Math.Abs(dy) ? (dx >= 0 ? "east" : "west") : (dy >= 0 ? "north" : "south");
}
