using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Light and air of whole rooms.</summary>
internal sealed class RoomServiceParser : StatementParser<RoomServiceStatement>
{
    public override IReadOnlyCollection<string> DetailWords => ["supply", "exhaust"];

    protected override IReadOnlyDictionary<string, Action<RoomServiceStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<RoomServiceStatement, Cursor>>();

    protected override RoomServiceStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(RoomServiceStatement s, Cursor c) => Room(s, c);

    protected override bool Headless(RoomServiceStatement s, Cursor c)
    {
        Room(s, c);
        return true;
    }

    private static void Room(RoomServiceStatement s, Cursor c)
    {
        var start = c.Here;
        bool air = s.Keyword.Text == "air";
        var direction = air ? c.Word("a direction of air", "supply", "exhaust") : null;
        if ((air && direction is null) || c.Name("the name of a room") is not { } room)
        {
            return;
        }

        var amount = !c.AtNumber ? null : air
            ? c.Quantity("a flow of air", QuantityKind.AirFlow, QuantityKind.Flow)
            : c.Quantity("a light level", QuantityKind.Illuminance);
        s.Rooms.Add(new RoomServiceSyntax(direction, room, amount, start.To(c.Before)));
    }
}
