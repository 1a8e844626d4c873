using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Language.Details;

/// <summary>What <c>light</c> and <c>air</c> may say of rooms.</summary>
public static class RoomServiceDetails
{
    public static Detail<RoomServiceSyntax> Level { get; } = new(
        "room", "a room and its light level", ["filleting 541 lux", "filleting 543 lux", "receiving 543 lux"], c => RoomOf(c, air: false)) { Of = ["light"], Repeatable = true };

    public static Detail<RoomServiceSyntax> Supply { get; } = Air("supply", "a room that air is brought into", "supply filleting 310 m3/h", "supply filleting 330 m3/h");

    public static Detail<RoomServiceSyntax> Exhaust { get; } = Air("exhaust", "a room that air is drawn out of", "exhaust receiving 320 m3/h", "exhaust receiving 340 m3/h");

    public static IReadOnlyList<Detail> All { get; } = [Supply, Exhaust];

    private static Detail<RoomServiceSyntax> Air(string word, string says, params string[] examples) =>
        new(word, says, examples, c => RoomOf(c, air: true)) { Of = ["air"], Repeatable = true };

    private static RoomServiceSyntax? RoomOf(Cursor c, bool air)
    {
        var start = air ? c.Before : c.Here;
        var direction = air ? new Syntax.Values.WordSyntax(c.Before.Value.ToLowerInvariant(), c.Before) : null;
        if (c.Name("the name of a room") is not { } room)
        {
            return null;
        }

        var amount = !c.AtNumber ? null : air
            ? c.Quantity("a flow of air", QuantityKind.AirFlow, QuantityKind.Flow)
            : c.Quantity("a light level", QuantityKind.Illuminance);
        return new RoomServiceSyntax(direction, room, amount, start.To(c.Before));
    }
}
