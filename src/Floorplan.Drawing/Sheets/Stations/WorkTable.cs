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
            .SelectMany(room => room.Select(s => Row(s, Tape.For(plan.Units))).Prepend([room.First().Room.Label]))]);

    private static IReadOnlyList<Cell> Row(Station station, Tape tape) =>
    [
        FormattableString.Invariant($"{station.Item}"),
        station.Caption,
        station.Workers.Count == 0 ? "" : tape.Cell(station.WorkHeight),
        tape.Cell(station.Top),
        string.Join(", ", station.Workers.GroupBy(w => w.Stands).Select(g => FormattableString.Invariant($"{g.Count()} {g.Key.Word()}"))),
        string.Join(", ", station.Clears.Select(c => $"{c.Side.Word()} {tape.Cell(c.Depth)} {c.Purpose}".TrimEnd())),
    ];
}
