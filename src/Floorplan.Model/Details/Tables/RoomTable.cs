using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that a room may say.</summary>
internal static class RoomTable
{
    public static IReadOnlyList<SaidRow<RoomStatement>> All { get; } =
    [
        new SaidRow<RoomStatement, SliceSyntax>(
            "from",
            RoomDetails.Slice,
            (s, _) => s.Value(RoomDetails.Slice),
            (slice, units) => $"{Bound(slice.From, units)} to {Bound(slice.To, units)}")
        {
            ToldByBox = true,
        },
        SaidRows<RoomStatement>.Size(RoomDetails.Area, toldByBox: true),
        SaidRows<RoomStatement>.Of(RoomDetails.In),
        SaidRows<RoomStatement>.Place(RoomDetails.Place),
        SaidRows<RoomStatement>.Of(RoomDetails.Keep),
        SaidRows<RoomStatement>.Of(RoomDetails.Cooling),
        SaidRows<RoomStatement>.Of(RoomDetails.Light),
        SaidRows<RoomStatement>.Part<LampsSyntax, SaidLamps>(
            "lamps", RoomDetails.Lamps, SaidLamps.Of, (lamps, units) => lamps.Print(units)),
        SaidRows<RoomStatement>.Part<Language.Syntax.Values.WordSyntax, bool>(
            "floor", RoomDetails.Washed, w => w.Text == "down", (isWashed, _) => isWashed ? "washed down" : "kept dry"),
        new SaidRow<RoomStatement, IReadOnlyList<FinishSyntax>>(
            "finish",
            RoomDetails.Finish,
            (s, _) => s.Finishes is { Count: > 0 } finishes ? finishes : null,
            (finishes, _) => string.Join(", ", finishes.Select(f => $"{f.Surface.Text} {f.Text.Text}"))),
    ];

    private static string Bound(
        SliceBoundSyntax? bound,
        UnitSystem units) => bound?.Side?.Side.Word() ?? (bound?.Distance is { } at ? QuantityText.Length(at.Value, units) : "");
}
