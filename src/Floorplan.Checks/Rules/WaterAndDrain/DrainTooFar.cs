using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>
/// A sink is taken to bring its own trap; only things that ask for a drain are looked at. Which drain serves them is a fact of the plan,
/// so that the waste of a sink may run in a pipe to another room.
/// </summary>
internal sealed class DrainTooFar : Rule
{
    public override string Name => "drain-too-far";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "A station lets water go, and its room has no drain, or only a far one.";

    public override string Why
        => "Water that runs over the floor to a far drain is walked through and splashed on, carries dirt past other stations, and "
            + "freezes or grows slime on its way.";

    public override string Mend
        => "Put a drain below or beside the station, or move the station to one. Food equipment ends above the drain with an air gap, "
            + "never in a fixed joint.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("waste pipe or run-off of at most 3 m from station to drain", Origin.OwnAssumption),
        new(
            "Food Code 5-402.11: food equipment drains indirectly; a dishwasher stands within 5 ft of a trapped floor drain",
            Origin.FoundInSecondaryCopy),
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new("drain to station", 3000, LimitUnit.Millimetres, Sources[0], Severity.Warning)];

    public override string Bad
        => WetBox.With(
            "Far drain",
            "water w1 cold hot in rinse, north wall, 1200 from west, height 1200\ndrain fd1 floor in rinse, 4600 from west, centred, 100");

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("plan \"Far", "plan \"Near drain\""),
        new("drain fd1", "drain fd1 floor in rinse, 1500 from west, centred, 100"),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var inRoom in context.Plan.Stations.Where(s => NeedOf(s) is not null).GroupBy(s => s.Room))
        {
            var served = inRoom.Select(s => (Station: s, By: context.Facts.Supply.Of(s.Id, NeedKind.Drain))).ToList();
            if (served.Exists(s => s.By?.Point is null))
            {
                yield return None(context, [.. served.Where(s => s.By?.Point is null).Select(s => s.Station)]);
            }

            foreach (var (station, by) in served)
            {
                if (by is { Point: { } drain, Branch: { } branch } && branch.Value > limit.Value + Tiers.Tolerance)
                {
                    yield return Far(context, station, drain, branch, limit);
                }
            }
        }
    }

    private static Need? NeedOf(Station station) => station.Needs.FirstOrDefault(n => n.Kind == NeedKind.Drain);

    // One drain that is missing is one mistake, however many stations ask for it.
    private Finding None(CheckContext context, IReadOnlyList<Station> stations)
    {
        var room = stations[0].Room;
        string drain = Suggest.Drain(room, context.Plan.Units);
        return CheckContext.Find(
            this, Severity.Error, [.. stations.Select(s => s.Id), room.Id],
            $"{Named.List([.. stations.Select(s => Named.Of(s))])} {(stations.Count == 1 ? "needs" : "need")} a drain, and "
                + $"{Named.Of(room)} has none",
            $"add one, such as: {drain}", NeedOf(stations[0])!.Span, stations[0].Bounds.Centre.Coordinate) with
        { NewLine = drain };
    }

    private Finding Far(CheckContext context, Station station, ServicePoint drain, Figure branch, AppliedLimit limit) => CheckContext.Find(
        this, limit, branch, [station.Id, drain.Id], $"the nearest drain for {Named.Of(station)} is {drain.Id}, {branch.Text} away",
        $"move {drain.Id} {Nudge.Toward(drain.At.Coordinate, station.Footprint, limit.Value, context.Plan.Units)}, or add a drain at "
            + $"{station.Id}",
        NeedOf(station)!.Span, station.Bounds.Centre.Coordinate);
}
