using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Checks.Measuring;

/// <summary>Lines of the plan language that a mend proposes, complete, so that they can be copied into the plan.</summary>
internal static class Suggest
{
    /// <summary>Nobody drills a floor to the millimetre. Own choice.</summary>
    private const double MetricStep = 50;

    /// <summary>A floor drain in the middle of a room, 100 mm or 4 in wide.</summary>
    public static string Drain(Room room, UnitSystem units)
    {
        var at = room.Floor.InteriorPoint.Coordinate;
        return $"drain fd-{room.Id} floor in {room.Id}, {Across(at.X - room.Bounds.West.Millimetres, units)} from west, "
            + $"{Across(at.Y - room.Bounds.South.Millimetres, units)} from south, {Written(4, 100, units)}";
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

    /// <summary>How large a hand sink is that a mend proposes: 400 x 350 mm or 16 x 14 in.</summary>
    public static string HandSink(UnitSystem units) => $"{Written(16, 400, units)} x {Written(14, 350, units)}";

    /// <summary>To whole inches, or to 50 mm.</summary>
    private static string Across(double millimetres, UnitSystem units)
    {
        double step = units == UnitSystem.Metric ? MetricStep : InchPound.MillimetresPerInch;
        return QuantityText.Length(Length.FromMillimetres(Math.Max(1, Math.Round(millimetres / step)) * step), units);
    }

    private static string Written(int inches, int millimetres, UnitSystem units) =>
        QuantityText.Length(units == UnitSystem.Metric ? Length.FromMillimetres(millimetres) : Length.FromInches(inches), units);
}
