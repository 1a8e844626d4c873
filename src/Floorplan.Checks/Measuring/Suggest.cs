using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Checks.Measuring;

/// <summary>Lines of the plan language that a mend proposes, complete, so that they can be copied into the plan.</summary>
internal static class Suggest
{
    private const double Round = 50;

    /// <summary>A floor drain in the middle of a room, 100 mm or 4 in wide.</summary>
    public static string Drain(Room room, UnitSystem units)
    {
        var at = room.Floor.InteriorPoint.Coordinate;
        return $"drain fd-{room.Id} floor in {room.Id}, {Across(at.X - room.Bounds.West.Millimetres, units)} from west, {Across(at.Y - room.Bounds.South.Millimetres, units)} from south, {Written(4, 100, units)}";
    }

    /// <summary>A water point on the wall nearest to a thing, at the middle of it, 1200 mm or 48 in up.</summary>
    public static string Water(string id, string what, Room room, Box by, UnitSystem units)
    {
        var (wall, _) = new[]
        {
            (Side.North, room.Bounds.North - by.North), (Side.South, by.South - room.Bounds.South),
            (Side.East, room.Bounds.East - by.East), (Side.West, by.West - room.Bounds.West),
        }.MinBy(w => w.Item2.Nanometres);
        var middle = by.Centre;
        string along = wall.RunsEastWest()
            ? Across(middle.X.Millimetres - room.Bounds.West.Millimetres, units) + " from west"
            : Across(middle.Y.Millimetres - room.Bounds.South.Millimetres, units) + " from south";
        return $"water {id} {what} in {room.Id}, {wall.Word()} wall, {along}, height {Written(48, 1200, units)}";
    }

    /// <summary>To whole inches, or to 50 mm.</summary>
    private static string Across(double millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? Math.Max(Round, Math.Round(millimetres / Round) * Round).ToString("0", CultureInfo.InvariantCulture)
        : Math.Max(1, Math.Round(millimetres / InchPound.MillimetresPerInch)).ToString("0", CultureInfo.InvariantCulture) + " in";

    private static string Written(int inches, int millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? millimetres.ToString(CultureInfo.InvariantCulture)
        : inches.ToString(CultureInfo.InvariantCulture) + " in";
}
