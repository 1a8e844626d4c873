using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>The loads of each cold room that says what it keeps.</summary>
internal static class ColdRooms
{
    private const double Safety = 0.10;

    /// <summary>Of 16 to 20 h that ASHRAE has.</summary>
    private const double Hours = 18;

    private static readonly Source Sum = new("sum of the loads, averages of the summer day", Origin.CommonPractice);
    private static readonly Source DutySource = new(
        "ASHRAE Refrigeration: 10 % for safety, 16 to 20 h of running a day", Origin.FromMemory);

    public static IReadOnlyList<ColdRoomLoad> Of(PlanFacts facts) =>
    [
        .. facts.Plan.Rooms.Where(r => r is { Class: HygieneClass.Cold, KeepCelsius: { } keep } && DesignAir.Fits(keep)
            && r.CeilingHeight > Length.Zero).DistinctBy(r => r.Id).Select(r => Of(facts, r)),
    ];

    private static ColdRoomLoad Of(PlanFacts facts, Room room)
    {
        var w = new Workings(facts.Plan.Units);
        var missing = new List<NotSaid>();
        var day = RoomDay.Of(facts, room);
        if (day is null)
        {
            missing.AddRange(facts.Day.Planned.Needs.Take(1).Select(n => new NotSaid(
                $"the day, for what it brings into {room.Id}: {n.Missing}", n.Write.Replace("`", "", StringComparison.Ordinal), n.Span)));
        }

        var inside = new InsideLoads(facts.Plan, room, w);
        List<ColdLoad> lines =
        [
            .. new SideLoads(facts.Plan, room, w).All(),
            .. day is null ? [] : new ProductLoads(facts, room, w).All(day, missing),
            .. new DoorLoads(facts, room, w).All(day),
            .. inside.Brought(day),
        ];
        lines.AddRange(inside.OfCooler(lines.Sum(l => l.Heat.Value)));
        var load = w.Of(
            "load", room.Id, lines.Sum(l => l.Heat.Value), Measure.Heat, "sum of the loads",
            WorkingText.Sum([.. lines.Select(l => l.Heat.Text)]), Sum, [.. lines.Select(l => FigureInput.Of(l.Heat))]);
        string hours = QuantityText.Time(Hours * 3600);
        string safety = w.Text(Safety, Measure.Ratio);
        var duty = w.Of(
            "cooling unit", room.Id, ColdStore.Duty(load.Value, Safety, Hours), Measure.Heat, "load x (1 + safety) x 24 h / running time",
            $"{load.Text} x (1 + {safety}) x 24 h / {hours}", DutySource, FigureInput.Of(load),
            FigureInput.Taken("safety", safety, DutySource), FigureInput.Taken("running time a day", hours, DutySource));
        return new ColdRoomLoad(room, lines, load, duty, w.Figures, missing);
    }
}
