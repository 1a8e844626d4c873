using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>The key: every item with its size, room and place from the room's finished faces.</summary>
internal static class StationTable
{
    public static KeyTable Of(Plan plan) => new(
        "Key (places: south-west corner in the room)",
        ["No", "Item", "W × D × H", "Room", "From W", "From S"],
        [.. plan.Stations.Select(s => Row(s, plan.Units))]);

    private static IReadOnlyList<string> Row(Station station, UnitSystem units) =>
    [
        FormattableString.Invariant($"{station.Item}"),
        station.Label,
        StationLayer.Size(station, units) + " × " + LengthText.Dimension(station.Top - station.Bottom, units) + (station.Hung ? " hung" : ""),
        station.Room.Label,
        LengthText.Dimension(station.Bounds.West - station.Room.Bounds.West, units),
        LengthText.Dimension(station.Bounds.South - station.Room.Bounds.South, units),
    ];
}
