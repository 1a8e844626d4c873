using Floorplan.Drawing.Blocks;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Details;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Placing;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Weights;

namespace Floorplan.Drawing.Schedules;

/// <summary>Every item with its room, size, place from the room's finished faces, workers and needs.</summary>
internal static class StationSchedule
{
    /// <summary>Every row of the table of details that has no column of its own before them.</summary>
    private static readonly IReadOnlyList<SaidRow<StationStatement>> Said =
    [
        .. StationTable.All.Except(
        [
            StationTable.Size, StationTable.Place, StationTable.WorkHeight, StationTable.Underside, StationTable.Hung,
            StationTable.OnWheels, StationTable.WeightEmpty,
            StationTable.WeightFull,
        ]),
    ];

    public static Schedule Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        string unit = Schedule.Unit(plan);
        return new Schedule(
            "stations",
            "Stations",
            [
                "item", "id", "name", "kind", "room", $"width {unit}", $"depth {unit}", $"diameter {unit}", $"underside {unit}",
                $"top {unit}", $"work height {unit}",
                $"from west {unit}", $"from south {unit}", "hung", "movable", "people", .. Said.Select(r => r.Word), "weight empty",
                "weight full", "line"],
            [.. plan.Stations.Select(s => Row(facts, s, facts.Items.Find(s)))]);
    }

    private static IReadOnlyList<object?> Row(PlanFacts facts, Station station, ItemWeight? weight)
    {
        var plan = facts.Plan;
        return
        [
            station.Item,
            station.Id,
            station.Label,
            station.Role.ToString().ToLowerInvariant(),
            station.Room.Label,
            Schedule.Number(station.Width, plan),
            Schedule.Number(station.Depth, plan),
            Schedule.Number(station.Diameter, plan),
            Schedule.Number(station.Bottom, plan),
            Schedule.Number(station.Top, plan),
            Schedule.Number(station.WorkHeight, plan),
            Schedule.Number(FromFaces.Of(station).West.Distance, plan),
            Schedule.Number(FromFaces.Of(station).South.Distance, plan),
            station.Hung,
            station.Movable,
            station.Workers.Count,
            .. Said.Select(
                r => (object?)(r == StationTable.Needs
                    ? UseText.All(facts.Uses.By(station.Id), plan.Units, "; ")
                    : station.Said.Print(r, plan.Units))),
            weight is { EmptyIsSaid: true } ? (Cell)weight.Empty : "",
            weight is null ? "" : (Cell)weight.Full,
            station.Span.Position.Line,
        ];
    }
}
