using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details.Services;

/// <summary>What every service point may say. What one kind may say is in its own list.</summary>
public static class ServiceDetails
{
    public static Detail<NameSyntax> Room { get; } = new("in", "the room that it is in", ["in filleting", "in receiving"], Forms.Room);

    public static Detail<SideSyntax> Wall { get; } =
        new("wall", "the wall that it is on, as `north wall`", ["south wall", "north wall"], Forms.Wall);

    public static Detail<PlaceTerm> Place { get; } = new(
        "place", "where it is", ["place 1510 from west, 410 from south", "place 1530 from west, 410 from south"],
        PlaceParser.Term)
    { BareRepeats = true };

    public static Detail<LengthSyntax> Height { get; } = Forms.Length(
        "height", "its height above the finished floor", "a height above the floor", "height 1210", "height 1230");
}
