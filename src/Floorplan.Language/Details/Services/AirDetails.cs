using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What <c>air</c> may say of rooms.</summary>
public static class AirDetails
{
    public static Detail<RoomAirSyntax> Supply { get; } =
        Of(AirDirection.Supply, "a room that air is brought into", "filleting 310 m3/h", "filleting 330 m3/h");

    public static Detail<RoomAirSyntax> Exhaust { get; } =
        Of(AirDirection.Exhaust, "a room that air is drawn out of", "receiving 320 m3/h", "receiving 340 m3/h");

    public static IReadOnlyList<Detail> All { get; } = [Supply, Exhaust];

    private static Detail<RoomAirSyntax> Of(AirDirection direction, string says, params string[] rooms)
    {
        string word = TermWord.Of(direction);
        return new(word, says, [.. rooms.Select(r => $"{word} {r}")], c => Read(c, direction)) { Repeatable = true };
    }

    private static RoomAirSyntax? Read(Cursor c, AirDirection direction)
    {
        var start = c.Before;
        if (c.Name("the name of a room") is not { } room)
        {
            return null;
        }

        var flow = c.AtNumber ? c.Quantity("a flow of air", QuantityKind.AirFlow, QuantityKind.Flow) : null;
        return new RoomAirSyntax(direction, room, flow, start.To(c.Before));
    }
}
