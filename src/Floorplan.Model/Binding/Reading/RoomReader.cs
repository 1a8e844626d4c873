using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads a <c>room</c> statement. Null when it has no name or no shape; that is reported here or by the parser.</summary>
internal sealed class RoomReader(Reports reports)
{
    public RoomFacts? Read(RoomStatement statement)
    {
        if (statement.Name is not { } name || ShapeOf(statement, name.Text) is not { } shape)
        {
            return null;
        }

        return new RoomFacts(shape, statement.Label?.Text ?? "", ClassOf(statement))
        {
            KeepCelsius = statement.Keep is { Value.Unit.Kind: QuantityKind.Temperature } keep ? keep.Value.Base : null,
            CoolingWatts = statement.Cooling is { Value.Unit.Kind: QuantityKind.Power } cooling ? cooling.Value.Base : null,
            Lux = statement.Light is { Value.Unit.Kind: QuantityKind.Illuminance } light ? light.Value.Base : null,
            Lamps = statement.Lamps is { } lamps ? SaidLamps.Of(lamps) : null,
            WashedDown = statement.WashedDown,
            Finishes = statement.Finishes.GroupBy(f => f.Surface.Text).ToDictionary(g => g.Key, g => g.Last().Text.Text),
        };
    }

    private static HygieneClass ClassOf(RoomStatement statement) => statement.Class?.Text switch
    {
        "dirty" => HygieneClass.Dirty,
        "clean" => HygieneClass.Clean,
        "cold" => HygieneClass.Cold,
        "staff" => HygieneClass.Staff,
        "plant" => HygieneClass.Plant,
        "toilet" => HygieneClass.Toilet,
        _ => HygieneClass.Dry,
    };

    private RoomDraft? ShapeOf(RoomStatement statement, string id)
    {
        if (statement.Area is { Depth: { } depth } area)
        {
            if (area.Width.Value <= Length.Zero || depth.Value <= Length.Zero)
            {
                reports.Error("size-not-positive", $"room `{id}` has a side of no length", area.Span, "give it a size above zero");
                return null;
            }

            return new RoomDraft(
                id, statement.HeadSpan)
            { Area = new RoomArea(area.Width.Value, depth.Value, statement.In, statement.Place, area.Span) };
        }

        return SliceOf(statement, id) is { } slice ? new RoomDraft(id, statement.HeadSpan) { Slice = slice } : null;
    }

    private Slice? SliceOf(RoomStatement statement, string id)
    {
        if (statement.From is not { } from || statement.To is not { } to)
        {
            if (statement.From is null && statement.To is null && statement.Area is null)
            {
                reports.Error(
                    "room-without-shape", $"room `{id}` has no shape", statement.HeadSpan,
                    $"add `from west to {reports.Example("3600", "12 ft")}`, or `area {reports.Example("1300 x 1100", "52 x 44")}, in` "
                        + "another room");
            }

            return null;
        }

        var span = from.Span.To(to.Span);
        bool northwards = from.Side is { } f && f.Side.RunsEastWest() || to.Side is { } t && t.Side.RunsEastWest();
        if (northwards && (from.Side is { Side: Side.East or Side.West } || to.Side is { Side: Side.East or Side.West }))
        {
            reports.Error(
                "room-back-to-front", $"room `{id}` starts on one way and ends on the other", span,
                "write `from west to east` or `from south to north`");
            return null;
        }

        // Written from the far end, such as `from east to 3600`, it means the same slice.
        bool turned = from.Side is { Side: Side.East or Side.North } || to.Side is { Side: Side.West or Side.South };
        var low = (turned ? to : from).Distance?.Value;
        var high = (turned ? from : to).Distance?.Value;
        if (turned && from.Side is not null && to.Side is not null && from.Side.Side == to.Side.Side)
        {
            reports.Error(
                "room-back-to-front", $"room `{id}` ends where it starts or before", span,
                "write `from west to east` or `from south to north`");
            return null;
        }

        return northwards ? new Slice(null, null, low, high, span) : new Slice(low, high, null, null, span);
    }
}
