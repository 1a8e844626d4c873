using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Lamps;

/// <summary>Lamps, room by room, and where light must stay on when the power fails.</summary>
internal static class LightSizes
{
    private const int MostNames = 6;

    private const double FootCandle = 1 / InchPound.SquareMetresPerSquareFoot;

    private static readonly Source Sum = new("sum over the rooms", Origin.CommonPractice);

    private static readonly string[] Cautions =
    [
        "Power can kill: a licensed electrician does the work, lamps in washed rooms are closed against water; local codes prevail.",
        "The count is for buying: measure the light at the height of the work when the lamps hang.",
    ];

    /// <summary>Null where the plan says no level for any room.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        if (facts.Light.Count == 0 && facts.Lamps.Count == 0)
        {
            return null;
        }

        var w = new Workings(plan.Units);
        var rooms = plan.Rooms.DistinctBy(r => r.Id).Select(r => facts.Lamps.GetValueOrDefault(r.Id)).OfType<RoomLamps>().ToList();
        List<SizeRow> rows = rooms.Count == 0 ? [] : [Total(rooms, w)];
        string[] ways = [.. WaysOut(facts)];
        if (ways.Length > 0)
        {
            rows.Add(new SizeRow(
                "emergency light", Names(ways),
                plan.Head.Code == CodeChoice.Us
                    ? $"on average {w.Text(FootCandle, Measure.Illuminance)} along the way out for 90 min, NFPA 101, from memory"
                    : $"at least {w.Text(1, Measure.Illuminance)} along the middle of the way out for an hour, EN 1838", null));
        }

        return new SizedSubject("Light", rows)
        {
            Figures = [.. rooms.SelectMany(r => r.Figures), .. w.Figures],
            Tables = rooms.Count == 0 ? [] : [Table(rooms, plan.Units)],
            Missing = [.. Missing(facts, rooms)],
            Cautions = Cautions,
        };
    }

    private static SizeRow Total(List<RoomLamps> rooms, Workings w)
    {
        double count = rooms.Sum(r => r.Count.Value);
        var lamps = w.Of(
            "lamps", Figure.WholePlan, count, QuantityKind.Count, QuantityText.Count(count, "lamp"), "sum over the rooms",
            WorkingText.Sum([.. rooms.Select(r => QuantityText.Plain(r.Count.Value, 0))]), Sum,
            [.. rooms.Select(r => FigureInput.Of(r.Count))]);
        string draws = "together " + w.Text(rooms.Sum(r => r.Power.Value), Measure.Power);
        return SizeRow.Of(
            "lamps", lamps, rooms.TrueForAll(r => r.IsSaid) ? draws
                : $"{(rooms.Exists(r => r.IsSaid) ? "where not said, " : "")}battens of {RoomLamps.Batten}, own assumption; {draws}");
    }

    private static SizeTable Table(List<RoomLamps> rooms, UnitSystem units) => new(
        "Lamps, room by room", ["Room", "Asked", "Room index", "Lamps", "Rows", "Apart", "Reached", "Power"],
        [
            .. rooms.Select(r => new[]
            {
                r.Room.Id, r.Asked?.Text ?? "not said", r.Index.Text, r.Count.Text + (r.IsSaid ? ", said" : ""),
                    FormattableString.Invariant($"{r.Rows} of {r.Each}"),
                QuantityText.Distance(r.Spacing.Along, units)
                    + (r.Rows > 1 ? $", rows {QuantityText.Distance(r.Spacing.Across, units)}" : ""),
                r.Reached.Text, r.Power.Text,
            }),
        ],
        [.. rooms.SelectMany(r => new[] { r.Asked, r.Index, r.Count, r.Reached, r.Power }.OfType<Figure>())]);

    /// <summary>Rooms that people leave the unit by, and those that they work in; own reading of the way out.</summary>
    private static IEnumerable<string> WaysOut(PlanFacts facts)
    {
        var doors = facts.Plan.Openings
            .Where(o => (o.RoomA is null || o.RoomB is null) && (o.IsWalkable || (o.Kind == OpeningKind.CargoDoor && o.OpensFromInside)))
            .Select(o => (o.RoomA ?? o.RoomB)?.Id).ToHashSet();
        return facts.Plan.Rooms.Where(r => doors.Contains(r.Id) || facts.Crew.Working[r.Id].Value > 0).Select(r => r.Id).Distinct();
    }

    private static IEnumerable<NotSaid> Missing(PlanFacts facts, List<RoomLamps> lit)
    {
        foreach (var light in facts.Light.Values.Where(l => !lit.Exists(r => r.Room.Id == l.Room.Id)))
        {
            yield return new NotSaid(
                $"a light of {light.Room.Id} that lamps can give", $"light {light.Room.Id} {Level(facts.Plan, light.Room)}", light.SaidAt);
        }

        var dark = facts.Plan.Rooms.Where(r => !facts.Light.ContainsKey(r.Id)).DistinctBy(r => r.Id).ToList();
        if (dark.Count > 0)
        {
            yield return new NotSaid(
                $"light of {Names([.. dark.Select(r => r.Id)])}",
                "light " + string.Join(", ", dark.Take(MostNames).Select(r => $"{r.Id} {Level(facts.Plan, r)}")), dark[0].Span);
        }
    }

    /// <summary>What rules ask for in such rooms, at least.</summary>
    private static string Level(Plan plan, Room room) => (room.Class, plan.Units) switch
    {
        (HygieneClass.Dirty or HygieneClass.Clean, UnitSystem.Metric) => "540 lux",
        (HygieneClass.Dirty or HygieneClass.Clean, _) => "50 fc",
        (_, UnitSystem.Metric) => "220 lux",
        _ => "20 fc",
    };

    private static string Names(IReadOnlyList<string> names) => names.Count <= MostNames
        ? string.Join(", ", names)
        : FormattableString.Invariant($"{string.Join(", ", names.Take(MostNames))} and {names.Count - MostNames} more");
}
