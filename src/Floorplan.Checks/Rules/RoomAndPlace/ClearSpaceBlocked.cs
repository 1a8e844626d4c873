using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.RoomAndPlace;

internal sealed class ClearSpaceBlocked : Rule
{
    public override string Name => "clear-space-blocked";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says => "Floor that a station keeps clear is taken by a wall or by something fixed.";

    public override string Why
        => "A clear space is there for a lid, a trolley, a service panel or a person at work. Once something is bolted down in it, "
        + "the machine cannot be opened, loaded or mended.";

    public override string Mend
        => "Move the blocking thing, turn the station so that its clear side faces free floor, or put the blocking thing on wheels.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("The plan's own `clear` statement; the depth is the designer's or the maker's", Origin.CommonPractice),
        new(
            "21 CFR 117.20(b)(4), US CFR: adequate, unobstructed working space between equipment and walls, no number", Origin.FromMemory,
            Force.Law),
    ];

    public override string Bad => """
        plan "Brine room"
          units metric
        shell shed 5000 x 3200 x 2500
        room brine "Brining" clean from west to east
        door d1 brine to outside, south wall, 300 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in brine, 3500 from west, 1000 from south, 100
        station kettle "Brine kettle" in brine
          size 800 x 800 x 1000
          place against north wall, 1500 from west
          clear south 1200 "tipping"
        station rack "Salt rack" in brine
          size 900 x 500 x 1500
          place 1600 from west, 1400 from south
        """;

    public override IReadOnlyList<LineChange> Mended => [new("place 1600", "  place against south wall, 100 from east")];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("overlap"), .. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
        => context.Plan.Stations.SelectMany(s => s.Clears.SelectMany(c => OfClear(context, s, c)));

    private IEnumerable<Finding> OfClear(CheckContext context, Station station, ClearSpace clear)
    {
        if (Touch.Beyond(clear.Floor, station.Room.Floor) is { } wall)
        {
            yield return Found(context, station, clear, [station.Id], null, wall);
        }

        foreach (var other in context.Space.StationsNear(clear.Floor.EnvelopeInternal))
        {
            if (other.Id != station.Id
                && !other.Movable
                && Touch.IsBetween(other, 0, Mover.Person.HeightMm)
                && Touch.Shared(clear.Floor, other.Footprint) is { } shared)
            {
                yield return Found(context, station, clear, [station.Id, other.Id], other, shared);
            }
        }
    }

    private Finding Found(
        CheckContext context, Station station, ClearSpace clear, IReadOnlyList<string> things, Station? blocker, Geometry shared)
    {
        double free = station.Footprint.Distance(shared);
        string side = clear.Side.ToString().ToLowerInvariant();
        string purpose = clear.Purpose.Length == 0 ? "" : $" for {clear.Purpose}";
        return CheckContext.Find(this, Severity.Error, things,
            $"{(blocker is null ? "a wall" : Named.Of(blocker))} stands in the clear space {side} of {Named.Of(station)}{purpose}: "
                + $"{context.Text(free)} of {context.Text(clear.Depth)} is free",
            $"move {Named.Of(blocker ?? station)} {context.Text(clear.Depth.Millimetres - free)} away, or turn {Named.Of(station)} to "
                + "free floor",
            clear.Span, shared.InteriorPoint.Coordinate) with
        {
            Limit = $"limit {context.Text(clear.Depth)} (asked for by this plan)",
            Measured = free,
            LimitValue = clear.Depth.Millimetres,
        };
    }
}
