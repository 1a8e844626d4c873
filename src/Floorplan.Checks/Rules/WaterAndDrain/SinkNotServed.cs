using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Hand sinks take cold and hot water from the nearest point of any room, and their waste runs in a pipe to any drain.</summary>
internal sealed class SinkNotServed : Rule
{
    /// <summary>A waste pipe of a sink this long still finds a drain of the next room, mm; common practice.</summary>
    private const double NearDrain = 2000;

    public override string Name => "sink-not-served";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "The plan has water points, and none of them gives hand sinks cold or hot water, or no drain takes their waste. A plan that "
            + "names no "
        + "water point yet is not looked at, nor is its hot water where it has a heater. A room whose own water points are "
        + "all cold is told in a note, and so is any other "
            + "sink far from every drain.";

    public override string Why
        => "Cold water alone does not take fat and blood off hands, and nobody keeps hands in it for as long as washing takes.";

    public override string Mend
        => "Write `hot` at a water point near the sinks, or add one, with the heater that feeds it; give the unit a drain.";

    public override string Caution
        => "Mixed to hand temperature at the tap: water over 50 °C (122 °F) scalds. A licensed plumber does the work; local "
            + "codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Food Code 2022, 5-202.12(A): a hand sink gives water of at least 85 °F (29.4 °C) through a mixing valve or faucet",
            Origin.FoundInSecondaryCopy, Force.ModelCode),
        new(
            "Regulation (EC) 852/2004, Annex II, chapter I(4): washbasins for hands have hot and cold running water", Origin.FromMemory,
            Force.Law),
    ];

    public override string Bad => Washed("cold");

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("water w1", "water w1 cold hot in rinse, north wall, 1200 from west, height 1200"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var plan = context.Plan;
        var sinks = plan.Stations.Where(s => s.IsHandSink).ToList();
        bool plumbed = plan.Services.OfType<WaterPoint>().Any();
        if (sinks.Count == 0 || !plumbed)
        {
            yield break;
        }

        // What a plan lacks altogether, and a station asks for in words, is told by water-too-far and drain-too-far.
        string[] water =
        [
            .. Lacks(NeedKind.ColdWater) ? ["cold"] : Array.Empty<string>(),
            .. Lacks(NeedKind.HotWater) ? ["hot"] : Array.Empty<string>(),
        ];
        if (water.Length > 0)
        {
            yield return Dry(context, sinks, water);
        }

        // A washed room without a drain is told of already.
        if (Lacks(NeedKind.Drain) && !context.Found.Any(f => f.Rule is "room-without-drain" or "drain-too-far"))
        {
            string drain = Suggest.Drain(sinks[0].Room, plan.Units);
            yield return CheckContext.Find(
                this, Severity.Warning, [.. sinks.Select(s => s.Id)], $"no drain of the plan takes the waste of {Listed(sinks)}",
                $"add one, such as: {drain}", sinks[0].Span, sinks[0].Bounds.Centre.Coordinate) with
            { NewLine = drain };
        }

        bool asked = plan.Stations.Any(s => s.Needs.Any(n => n.Kind == NeedKind.HotWater))
            && !plan.Services.OfType<WaterPoint>().Any(p => p.Hot);
        foreach (var finding in water.Length > 0 || asked ? [] : ColdRooms(context, sinks))
        {
            yield return finding;
        }

        foreach (var sink in plan.Stations.Where(s => s.Role == StationRole.Sink && !s.IsHandSink
            && !s.Needs.Any(n => n.Kind == NeedKind.Drain)))
        {
            if (Undrained(context, sink) is { } finding)
            {
                yield return finding;
            }
        }

        bool Lacks(NeedKind kind)
            => sinks.Exists(s => context.Facts.Supply.Of(s.Id, kind)?.Point is null)
                && !plan.Stations.Any(s => s.Needs.Any(n => n.Kind == kind));
    }

    /// <summary>Rooms whose own water points are all cold: hot water has to come from another room, and nothing says that it
    /// does.</summary>
    private IEnumerable<Finding> ColdRooms(CheckContext context, List<Station> sinks)
    {
        var points = context.Plan.Services.OfType<WaterPoint>().Where(p => p.Room is not null).ToLookup(p => p.Room!.Id);
        var heated = context.Plan.Services.OfType<Heater>().Select(h => h.Room?.Id).ToHashSet();
        foreach (var room in sinks.GroupBy(s => s.Room.Id).Where(g => points[g.Key].Any() && points[g.Key].All(p => !p.Hot)
            && !heated.Contains(g.Key)))
        {
            var first = room.First();
            var near = points[room.Key].First();
            yield return CheckContext.Find(
                this, Severity.Note, [.. room.Select(s => s.Id)],
                $"the water points of {Named.Of(first.Room)} give no hot water for {Listed([.. room])}",
                $"write `hot` at {near.Id}, or set a small heater beside the sink", first.Span, first.Bounds.Centre.Coordinate);
        }
    }

    /// <summary>A sink in a room without a drain, when its waste would have to go far to one of another room.</summary>
    private Finding? Undrained(CheckContext context, Station sink)
    {
        var drains = context.Plan.Services.OfType<Drain>().ToList();
        return drains.Count == 0 || drains.Exists(d => d.Room?.Id == sink.Room.Id
                || sink.Footprint.IsWithinDistance(Model.Shapes.Shape.Factory.CreatePoint(d.At.Coordinate), NearDrain))
            ? null
            : CheckContext.Find(
                this, Severity.Warning, [sink.Id], $"no drain of {Named.Of(sink.Room)} takes the waste of {Named.Of(sink)}",
                $"add one, such as: {Suggest.Drain(sink.Room, context.Plan.Units)}", sink.Span, sink.Bounds.Centre.Coordinate);
    }

    private Finding Dry(CheckContext context, List<Station> sinks, string[] water)
    {
        string words = string.Join(' ', water);
        // Where cold water stands already, hot water is asked for most.
        var near = context.Plan.Services.OfType<WaterPoint>().First();
        var sink = sinks.Find(s => s.Room.Id == near.Room?.Id) ?? sinks[0];
        string point = Suggest.Water(sink.Id + "-water", words, sink.Room, sink.Bounds, context.Plan.Units);
        return CheckContext.Find(
            this, Severity.Warning, [.. sinks.Select(s => s.Id)],
            $"no water point gives {words.Replace(" ", " and ", StringComparison.Ordinal)} water for {Listed(sinks)}",
            $"make {near.Id} cold and hot, or add a point, such as: {point}", sinks[0].Span, sinks[0].Bounds.Centre.Coordinate) with
        {
            NewLine = point,
            Limit = $"hot and cold water at a hand sink ({Sources[0].Text})",
        };
    }

    private static string Listed(List<Station> sinks)
        => $"{(sinks.Count == 1 ? "hand sink" : "hand sinks")} {Named.List([.. sinks.Select(s => s.Id)])}";

    private static string Washed(string water) => WetBox.With("Hand sink", $"""
        water w1 {water} in rinse, north wall, 1200 from west, height 1200
        drain fd1 floor in rinse, 1500 from west, centred, 100
        """);
}
