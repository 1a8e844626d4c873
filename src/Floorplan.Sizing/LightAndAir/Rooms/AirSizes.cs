using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Cold;
using Floorplan.Sizing.Cold.Fabric;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>Air of the rooms, where it goes, and what keeps them warm or cool.</summary>
internal static class AirSizes
{
    /// <summary>Air changes an hour that scalding and plucking rooms have.</summary>
    private const double FewSteamChanges = 20;
    private const double ManySteamChanges = 30;

    private const double SecondsPerHour = 3600;

    /// <summary>Of the air in rooms that are washed down, and in others, on a winter day; own assumption.</summary>
    private const double WetRoom = 0.8;
    private const double DryRoom = 0.6;

    private const int MostRows = 2;

    private static readonly Source Sum = new("sum over the rooms", Origin.CommonPractice);
    private static readonly Source Damp = new("dew point, ASHRAE Fundamentals 2017 chapter 1", Origin.FromMemory);
    private static readonly Source Iso = new("ISO 13788: inside less 0.13 U x difference", Origin.FoundInPublicCopy);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);

    private static readonly string[] Cautions =
    [
        "Gas heaters and engines use up the air of a box and can kill: they get their own air and flue, fitted by a licensed trade.",
        "Fans, heaters and coolers are electric work near water: a licensed electrician, and local codes prevail.",
    ];

    /// <summary>Null where the plan has no room that people work in, and no fans.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        var w = new Workings(plan.Units);
        var needs = plan.Rooms.DistinctBy(r => r.Id).Where(r => r.Class != HygieneClass.Cold)
            .Select(r => RoomNeed.Of(facts, r, w)).ToList();
        if (!needs.Exists(n => n.Most is not null) && !facts.Air.Values.Any(a => a.HasSupply || a.HasExhaust))
        {
            return null;
        }

        var ways = needs.ConvertAll(n => AirWay.Of(facts, n, w));
        List<SizeRow> rows =
        [
            .. Fresh(needs, w),
            .. needs.Where(n => n.Steam is not null).Take(MostRows).Select(n => Steam(facts, n, w)),
            .. Way(ways),
        ];
        var missing = Missing(facts, needs, ways).ToList();
        var box = new BoxHeat(facts, w);
        double moved = Math.Max(ways.Sum(a => a.In?.Value ?? 0), ways.Sum(a => a.Out?.Value ?? 0));
        if (!box.IsAny)
        {
            // Only cold rooms: nothing to warm.
        }
        else if (plan.Head.Climate is { } climate && DesignAir.Fits(climate.Winter.Base))
        {
            var input = FigureInput.Said("outside", w.Text(climate.Winter.Base, Measure.Temperature), climate.Span);
            rows.Add(SizeRow.Of(
                "heating, winter day", box.Winter(climate.Winter, input, moved),
                $"{w.Text(BoxHeat.WinterInside, Measure.Temperature)} inside; walls, ceiling, floor and air"));
            if (DesignAir.IsSummerSaid(plan))
            {
                rows.Add(SizeRow.Of(
                    "cooling, summer day", box.Summer(moved),
                    $"{w.Text(DesignAir.UsualRoom, Measure.Temperature)} inside; people, lamps and tanks come on top"));
            }

            rows.AddRange(WinterDew(facts, box, climate.Winter, input, w));
        }
        else
        {
            missing.Add(new NotSaid("the climate, for heating and cooling", DesignAir.ClimateLine(plan), plan.Head.Span));
        }

        return new SizedSubject("Air", rows)
        {
            Figures = w.Figures,
            Tables = [Table(needs, ways)],
            Missing = missing,
            Cautions = Cautions,
        };
    }

    private static IEnumerable<SizeRow> Fresh(List<RoomNeed> needs, Workings w)
    {
        List<Figure> all = [.. needs.Select(n => n.Fresh).OfType<Figure>()];
        if (all.Count > 0)
        {
            var total = w.Of(
                "fresh air for people", Figure.WholePlan, all.Sum(f => f.Value), Measure.AirFlow, "sum over the rooms",
                WorkingText.Sum([.. all.Select(f => f.Text)]), Sum, [.. all.Select(FigureInput.Of)]);
            yield return SizeRow.Of("fresh air for people", total, "a kitchen's by ASHRAE 62.1; the least, whatever else fans do");
        }
    }

    private static SizeRow Steam(PlanFacts facts, RoomNeed need, Workings w)
    {
        double volume = facts.RoomSizes[need.Room.Id].Volume.Value;
        return SizeRow.Of(
            $"steam extract of {need.Room.Id}", need.Steam!,
            $"tanks give off {need.Vapour!.Text}; common practice {FewSteamChanges} to {ManySteamChanges} changes an hour, "
                + $"{QuantityText.Number(volume * FewSteamChanges / SecondsPerHour, Measure.AirFlow, w.Units)} to "
                + w.Text(volume * ManySteamChanges / SecondsPerHour, Measure.AirFlow));
    }

    private static IEnumerable<SizeRow> Way(List<AirWay> ways)
    {
        if (!ways.Exists(a => a.In is not null || a.Out is not null))
        {
            yield break;
        }

        string order = string.Join(" above ", ways.Where(a => a.In is not null || a.Out is not null).GroupBy(a => Math.Sign(a.Left))
            .OrderByDescending(g => g.Key).Select(g => string.Join(" and ", g.Select(a => a.Room.Id))));
        var fastest = ways.Where(a => a.Speed is not null).MaxBy(a => a.Speed!.Value);
        yield return new SizeRow(
            "pressure", order,
            fastest is null ? "no air goes from room to room"
                : $"{fastest.Speed!.Text} through {string.Join(", ", fastest.Through.Take(3))} of {fastest.Room.Id}",
            fastest?.Speed);
    }

    private static IEnumerable<SizeRow> WinterDew(PlanFacts facts, BoxHeat box, Quantity winter, FigureInput outside, Workings w)
    {
        if (box.Wall is not ({ } side, { } u) || winter.Base >= BoxHeat.WinterInside)
        {
            yield break;
        }

        double damp = facts.Plan.Rooms.Any(r => r.WashedDown) ? WetRoom : DryRoom;
        string inside = w.Text(BoxHeat.WinterInside, Measure.Temperature);
        string share = w.Text(damp, Measure.Ratio);
        string film = HeatText.Resistance(HeatPath.Inside, w.Units);
        var warm = FigureInput.Taken("inside", inside, Own);
        var surface = w.Of(
            "inside face of the walls in winter", Figure.WholePlan, HeatPath.Surface(BoxHeat.WinterInside, winter.Base, u.Value),
            Measure.Temperature, "inside - film x U x difference", $"{inside} - {film} x {u.Text} x ({inside} - {outside.Text})", Iso, warm,
            outside, FigureInput.Of(u), FigureInput.Taken("film", film, Iso));
        var dew = w.Of(
            "dew point inside in winter", Figure.WholePlan, Psychrometrics.DewPoint(BoxHeat.WinterInside, damp), Measure.Temperature,
            "where air of that temperature and humidity is full of water", $"{inside}, {share}", Damp, warm,
            FigureInput.Taken("humidity of the air inside", share, Own));
        yield return new SizeRow(
            "dew on linings in winter", surface.Value < dew.Value ? "yes" : "none",
            $"{surface.Text} on {side.Name}, dew point {dew.Text} of air of {share}", surface);
    }

    private static IEnumerable<NotSaid> Missing(PlanFacts facts, List<RoomNeed> needs, List<AirWay> ways)
    {
        foreach (var (need, way) in needs.Zip(ways).Where(p => p.First.Most is not null))
        {
            var air = facts.Air[need.Room.Id];
            if ((air.HasExhaust && air.Out is null) || (air.HasSupply && air.In is null))
            {
                bool isOut = air.HasExhaust && air.Out is null;
                string flow = QuantityText.Written(need.Most!.Value, Measure.AirFlow, facts.Plan.Units);
                yield return new NotSaid(
                    $"how much air the {(isOut ? "exhaust" : "supply")} of {need.Room.Id} moves, so that what the room needs is taken",
                    $"air {(isOut ? "exhaust" : "supply")} {need.Room.Id} {flow}", need.Room.Span);
            }
        }
    }

    private static SizeTable Table(List<RoomNeed> needs, List<AirWay> ways) => new(
        "Air, room by room", ["Room", "People", "Fresh air", "Steam extract", "Blown in", "Drawn out", "Pressure", "Through doors"],
        [
            .. needs.Zip(ways).Select(p => new[]
            {
                p.First.Room.Id, FormattableString.Invariant($"{p.First.People}"), p.First.Fresh?.Text ?? "", p.First.Steam?.Text ?? "",
                p.Second.In?.Text ?? "", p.Second.Out?.Text ?? "", p.Second.Pressure, p.Second.Speed?.Text ?? "",
            }),
        ],
        [
            .. needs.Zip(ways).SelectMany(p => new[] { p.First.Fresh, p.First.Steam, p.Second.In, p.Second.Out, p.Second.Speed })
                .OfType<Figure>(),
        ]);
}
