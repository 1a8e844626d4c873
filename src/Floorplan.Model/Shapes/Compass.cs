using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;

namespace Floorplan.Model.Shapes;

/// <summary>Arithmetic of the four sides.</summary>
public static class Compass
{
    public static IReadOnlyList<Side> All { get; } = [Side.North, Side.South, Side.East, Side.West];

    public static Side Opposite(this Side side) => side switch
    {
        Side.North => Side.South,
        Side.South => Side.North,
        Side.East => Side.West,
        _ => Side.East,
    };

    /// <summary>The side after quarter turns clockwise, seen from above: one turn takes south to west.</summary>
    public static Side Turned(this Side side, int quarters) => (((quarters % 4) + 4) % 4) switch
    {
        1 => Clockwise(side),
        2 => Opposite(side),
        3 => Opposite(Clockwise(side)),
        _ => side,
    };

    /// <summary>North and south walls run west to east; their place is a y.</summary>
    public static bool RunsEastWest(this Side side) => side is Side.North or Side.South;

    /// <summary>The x or y of one side of a box.</summary>
    public static Length Of(this Box box, Side side) => side switch
    {
        Side.North => box.North,
        Side.South => box.South,
        Side.East => box.East,
        _ => box.West,
    };

    public static string Word(this Side side) => side switch
    {
        Side.North => "north",
        Side.South => "south",
        Side.East => "east",
        _ => "west",
    };

    private static Side Clockwise(Side side) => side switch
    {
        Side.North => Side.East,
        Side.East => Side.South,
        Side.South => Side.West,
        _ => Side.North,
    };
}
