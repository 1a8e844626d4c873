using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Placing;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>The key: every item with its size, room and place from the room's finished faces.</summary>
internal static class StationKeyTable
{
    public static KeyTable Of(Plan plan) => new(
        "Key to items",
        ["No", "Item", ItemSize.Words, "From west, south"],
        [.. plan.Stations.GroupBy(s => s.Room.Id)
            .SelectMany(room => room.Select(s => Row(s, plan.Units)).Prepend([room.First().Room.Label]))]);

    private static IReadOnlyList<Cell> Row(Station station, UnitSystem units) =>
    [
        FormattableString.Invariant($"{station.Item}"),
        station.Caption,
        ItemSize.Whole(station, units) + (station.Hung ? " hung" : ""),
        $"{Place(FromFaces.Of(station).West, units)}, {Place(FromFaces.Of(station).South, units)}",
    ];

    private static string Place(SetOut place, UnitSystem units)
    {
        var tape = Tape.For(units);
        return tape.Cell(tape.Between(place.Face, place.Edge));
    }
}
