using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
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
        ["No", "Item", "Wide × deep × high", "From west, south"],
        [.. plan.Stations.GroupBy(s => s.Room.Id)
            .SelectMany(room => room.Select(s => Row(s, plan.Units)).Prepend([room.First().Room.Label]))]);

    private static IReadOnlyList<Cell> Row(Station station, UnitSystem units) =>
    [
        FormattableString.Invariant($"{station.Item}"),
        station.Caption,
        Size(station, units) + (station.Hung ? " hung" : ""),
        $"{QuantityText.Cell(FromFaces.Of(station).West, units)}, {QuantityText.Cell(FromFaces.Of(station).South, units)}",
    ];

    /// <summary>Feet and inches are long, so that they may go on a second line between two sizes.</summary>
    private static string Size(Station station, UnitSystem units)
    {
        string by = units == UnitSystem.Metric ? "×" : " × ";
        string floor = station.Diameter is { } diameter
            ? "Ø" + QuantityText.Cell(diameter, units)
            : QuantityText.Cell(station.Bounds.Width, units) + by + QuantityText.Cell(station.Bounds.Depth, units);
        return floor + by + QuantityText.Cell(station.Top - station.Bottom, units);
    }
}
