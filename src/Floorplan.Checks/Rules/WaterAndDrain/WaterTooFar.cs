using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Water;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>A sink is taken to bring its own tap; only stations that ask for water are looked at.</summary>
internal sealed class WaterTooFar : Rule
{
    public override string Name => "water-too-far";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "A station needs cold or hot water, and its room has no such point, or only a far one.";

    public override string Why
        => "A hose led across an aisle is stepped over, trips people, lies on a dirty floor and ends up in the product. A point within a "
            + "short branch of the station keeps the water where it is used.";

    public override string Mend => "Put a water point on the wall at the station, or move the station to one.";

    public override IReadOnlyList<Source> Sources { get; } =
        [new("a branch of 3 m from point to station, without crossing a walk", Origin.OwnAssumption)];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("water point to station", 3000, LimitUnit.Millimetres, Sources[0], Severity.Warning)];

    public override string Bad
        => WetBox.With(
            "Far tap",
            "water w1 cold hot in rinse, south wall, 300 from east, height 1200\ndrain fd1 floor in rinse, 1500 from west, centred, 100");

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("plan \"Far", "plan \"Near tap\""),
        new("water w1", "water w1 cold hot in rinse, north wall, 1200 from west, height 1200"),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var station in context.Plan.Stations)
        {
            var at = station.Bounds.Centre.Coordinate;
            var missing = new List<Need>();
            foreach (var need in station.Needs.Where(n => n.Kind is NeedKind.ColdWater or NeedKind.HotWater).DistinctBy(n => n.Kind))
            {
                if (context.Facts.Supply.Of(station.Id, need.Kind)
                    is not { Choice: SupplyChoice.OwnRoom, Point: { } point, Branch: { } branch })
                {
                    missing.Add(need);
                }
                else if (branch.Value > limit.Value + Tiers.Tolerance)
                {
                    string nearer = Nudge.Toward(point.At.Coordinate, station.Footprint, limit.Value, context.Plan.Units);
                    yield return CheckContext.Find(
                        this, limit, branch, [station.Id, point.Id],
                        $"the nearest {Word(need)} water for {Named.Of(station)} is {point.Id}, {branch.Text} away",
                        $"move {point.Id} {nearer}, or add a point at {station.Id}", need.Span, at);
                }
            }

            if (missing.Count > 0)
            {
                // One point can give both, so both missing is one mistake.
                string words = string.Join(' ', missing.Select(Word).Order(StringComparer.Ordinal));
                string line = Suggest.Water(station.Id + "-water", words, station.Room, station.Bounds, context.Plan.Units);
                yield return CheckContext.Find(
                    this, Severity.Error, [station.Id],
                    $"{Named.Of(station)} needs {words.Replace(" ", " and ", StringComparison.Ordinal)} water, and "
                        + $"{Named.Of(station.Room)} has no point for it",
                    $"add a water point, such as: {line}", missing[0].Span, at) with
                { NewLine = line };
            }
        }
    }

    private static string Word(Need need) => need.Kind == NeedKind.HotWater ? "hot" : "cold";
}
