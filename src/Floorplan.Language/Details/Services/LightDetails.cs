using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements.Services;

namespace Floorplan.Language.Details.Services;

/// <summary>What <c>light</c> may say of rooms.</summary>
public static class LightDetails
{
    public static Detail<RoomLightSyntax> Level { get; } = new(
        "room", "a room and its light level", ["filleting 541 lux", "filleting 543 lux", "receiving 543 lux"], Read)
    { Repeatable = true };

    private static RoomLightSyntax? Read(Cursor c)
    {
        var start = c.Here;
        if (c.Name("the name of a room") is not { } room)
        {
            return null;
        }

        var level = c.AtNumber ? c.Quantity("a light level", QuantityKind.Illuminance) : null;
        return new RoomLightSyntax(room, level, start.To(c.Before));
    }
}
