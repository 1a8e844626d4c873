using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Cold.Chilling;
using Floorplan.Sizing.Cold.Loads;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold;

/// <summary>
/// Cold rooms and what cools product in them: the unit that each room needs, its loads, and how long things take to be cold.
/// </summary>
internal static class ColdSizes
{
    /// <summary>More rooms, stations or stores than this are in the tables only: one screen for all subjects.</summary>
    private const int MostRows = 3;

    private static readonly string[] Cautions =
    [
        "Refrigerants suffocate and some burn: licensed refrigeration work, and local codes prevail.",
        "A closed cold room kills whoever cannot get out: its door opens from inside, always, and somebody outside knows who is in it.",
        "A steel door frame through the insulation sweats and freezes: take one with a break in the steel, or one that is warmed.",
    ];

    /// <summary>Null where the plan has no cold room and nothing that cools product.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        var w = new Workings(plan.Units);
        var rooms = facts.ColdRooms;
        var missing = Missing(facts).ToList();
        foreach (var figure in rooms.SelectMany(r => r.Figures))
        {
            w.Add(figure);
        }

        missing.AddRange(rooms.SelectMany(r => r.Missing));
        List<SizeRow> rows = [.. rooms.Take(MostRows).Select(r => Row(plan.Units, r))];
        rows.AddRange(rooms.Take(MostRows).Select(r => Dew(r.Room, DewOnWall.Of(plan, r.Room, w))).OfType<SizeRow>());
        rows.AddRange(ChillTime.Of(facts, w).Take(MostRows).Select(Row));
        rows.AddRange(Stores(facts).Take(MostRows));
        return rows.Count == 0 && missing.Count == 0 ? null : new SizedSubject("Cold", rows)
        {
            Figures = w.Figures,
            Tables = [.. rooms.Select(Table)],
            Missing = [.. missing.DistinctBy(m => (m.What, m.Write))],
            Cautions = Cautions,
        };
    }

    private static IEnumerable<NotSaid> Missing(PlanFacts facts)
    {
        var plan = facts.Plan;
        var cold = plan.Rooms.Where(r => r.Class == HygieneClass.Cold).ToList();
        foreach (var room in cold.Where(r => r.KeepCelsius is not { } keep || !DesignAir.Fits(keep)))
        {
            yield return new NotSaid(
                $"a temperature that {room.Id} keeps", $"keep {QuantityText.Written(2, Measure.Temperature, plan.Units)} in room {room.Id}",
                room.Span);
        }

        if (cold.Count > 0 && !DesignAir.IsSummerSaid(plan))
        {
            yield return new NotSaid(
                $"the summer day, so that {QuantityText.Of(DesignAir.UsualSummer, Measure.Temperature, plan.Units)} outside is taken",
                DesignAir.ClimateLine(plan), plan.Head.Span);
        }
    }

    private static SizeRow Row(UnitSystem units, ColdRoomLoad load)
    {
        var most = load.Lines.MaxBy(l => l.Heat.Value)!;
        return SizeRow.Of(
            $"cooling unit of {load.Room.Id}", load.Duty,
            $"keeps {QuantityText.Of(load.Room.KeepCelsius!.Value, Measure.Temperature, units)}, runs 18 h a day; most of it {most.Name}, "
                + most.Heat.Text
                + (load.Room.CoolingWatts is { } said ? $"; the plan says {QuantityText.Of(said, Measure.Heat, units)}" : ""));
    }

    private static SizeRow? Dew(Room room, IReadOnlyList<DewOnWall> walls)
    {
        if (walls.Count == 0)
        {
            return null;
        }

        var worst = walls.MinBy(w => w.Surface.Value - w.DewPoint.Value)!;
        return new SizeRow(
            $"dew on walls of {room.Id}", worst.IsWet ? "yes" : "none",
            $"{worst.Side.Name}: {worst.Surface.Text} on its warm face, dew point {worst.DewPoint.Text}", worst.Surface);
    }

    private static SizeRow Row(ChillTime time)
    {
        string said = $"estimate in {time.Around}; the plan says {QuantityText.Time(time.Said)}";
        return time.Seconds is { } figure
            ? SizeRow.Of($"{figure.Name} in {time.Station.Id}", figure, said)
            : time.Unknown is { } unknown ? new SizeRow($"cooling in {time.Station.Id}", "not estimated", unknown, null)
            : new SizeRow($"cooling in {time.Station.Id}", "never cold", said, null);
    }

    private static IEnumerable<SizeRow> Stores(PlanFacts facts) => DayStore.Of(facts.Plan, facts.Day)
        .Where(s => facts.Plan.Stations.Any(p => p.Id == s.Id && p.Room.Class == HygieneClass.Cold))
        .Select(s => new SizeRow(
            $"store {s.Id}",
            s.Holds is { } holds ? $"{QuantityText.Plain(holds, 0)} {facts.Day.Planned.Things}" : "not said what it holds",
            $"{QuantityText.Plain(s.Items, 0)} come in the day" + (s.FullAt is null ? "" : ", more than fit"), null));

    private static SizeTable Table(ColdRoomLoad load) => new(
        $"Loads of {load.Room.Id}", ["Load", "How much", "Difference", "Heat"],
        [
            .. load.Lines.Select(l => new[] { l.Name, l.Amount, l.Difference, l.Heat.Text }),
            ["together", "average of the summer day", "", load.Load.Text],
            ["cooling unit", "10 % more, in 18 h", "", load.Duty.Text],
        ],
        [.. load.Lines.Select(l => l.Heat), load.Load, load.Duty]);
}
