using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.Stations;

/// <summary>Every item: at what height hands work, how high it stands, who stands where, and the floor it keeps clear.</summary>
internal static class WorkTable
{
    public static KeyTable Of(Plan plan) => new(
        "Heights and standing places",
        ["No", "Item", "Work at", "Top", "Stand", "Keep clear"],
        [.. plan.Stations.GroupBy(s => s.Room.Id)
            .SelectMany(room => room.Select(s => Row(s, plan.Units)).Prepend([room.First().Room.Label]))]);

    private static IReadOnlyList<Cell> Row(Station station, UnitSystem units) =>
    [
        FormattableString.Invariant($"{station.Item}"),
        station.Caption,
        station.Workers.Count == 0 ? "" : QuantityText.Cell(station.WorkHeight, units),
        QuantityText.Cell(station.Top, units),
        string.Join(", ", station.Workers.GroupBy(w => w.Stands).Select(g => FormattableString.Invariant($"{g.Count()} {g.Key.Word()}"))),
        string.Join(", ", station.Clears.Select(c => $"{c.Side.Word()} {QuantityText.Cell(c.Depth, units)} {c.Purpose}".TrimEnd())),
    ];
}
