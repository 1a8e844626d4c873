using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;
using Floorplan.Sizing.CarryingIn;

namespace Floorplan.Checks.Rules.RoomAndPlace;

internal sealed class WillNotGoIn : Rule
{
    public override string Name => "will-not-go-in";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says
        => "No way from outside is wide and high enough to bring a thing to its place, narrow side first, slid and turned round every "
            + "corner on the way; or things block each other's way in, whichever goes first.";

    public override string Why
        => "Tanks, racks and machines are bought to measure and come in one piece. A door a hand too narrow means cutting the wall, "
        + "or sending the machine back.";

    public override string Mend
        => "Make one opening on the way larger, order the thing knocked down in parts that pass, or set it in place before the wall is "
            + "closed and say so on the drawing.";

    public override string Caution
        => "Heavy things are moved by people who do this for a living: check weights, lifting points and floor strength, and keep out "
            + "from under a load.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Geometry of the plan: a box passes openings that are wider and higher, and moves as a rigid rectangle, slid and turned, "
            + "over the floor between walls and past what stands", Origin.OwnAssumption, Force.Measured),
        new("The search lets pass what is up to 20 mm too large on a side between walls, and 40 mm past other things; a thing longer "
            + "than 3 m up to 1/150 of its length", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("unreachable")];

    public override string Bad => """
        plan "Smoke house"
          units metric
        shell shed 6000 x 3000 x 2500
        room smoke "Smoking" clean from west to east
        door d1 smoke to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in smoke, 2000 from west, centred, 100
        station kiln "Smoking kiln" in smoke
          size 1400 x 1200 x 2000
          place against north wall, 3000 from west
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d1", "door d1 smoke to outside, south wall, 500 from west, 1300 x 2050, swings out, closes itself"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var order = context.Facts.BringingIn;
        foreach (var entry in order.Entries.Where(e => !e.GoesUpright))
        {
            yield return Found(context, entry);
        }

        // What does not go in even alone is told above.
        var alone = order.Entries.Where(e => e.GoesSomehow).Select(e => e.Station).ToHashSet<Station>(ReferenceEqualityComparer.Instance);
        List<Station> stuck = [.. order.Stuck.Where(alone.Contains)];
        if (stuck.Count > 0)
        {
            yield return CheckContext.Find(
                this, Severity.Warning, [.. stuck.Select(s => s.Id)],
                stuck.Count == 1
                    ? $"{Named.Of(stuck[0])} will not go in past what stands already, whatever is brought in first"
                    : $"{Named.List(stuck.Select(Named.Of))} block each other's way in, whichever goes first",
                "widen a door, move one of them out of the other's way, or set them in place before the walls are closed",
                stuck[0].Span, stuck[0].Bounds.Centre.Coordinate);
        }
    }

    private Finding Found(CheckContext context, Entry entry)
    {
        var (station, solid, _, tipped, _, leftOpen) = entry;
        string size = $"{context.Text(solid.Broad)} x {context.Text(solid.Long)}, {context.Text(solid.High)} high";
        if (entry.Decisive is not { } door)
        {
            return CheckContext.Find(this, Severity.Error, [station.Id, station.Room.Id],
                $"{Named.Of(station)} will not go in: no door leads to {Named.Of(station.Room)}",
                $"give {Named.Of(station.Room)} a door at least {context.Text(solid.Broad)} wide and {context.Text(solid.High)} high",
                station.Span, station.Bounds.Centre.Coordinate);
        }

        bool passes = solid.Broad <= door.Width.Millimetres && solid.High <= door.Height.Millimetres;
        string why = passes
            ? $"no way to {Named.Of(station.Room)} leaves room to turn it"
            : $"the widest way to {Named.Of(station.Room)} is {Named.Of(door)}, {context.Text(door.Width)} wide and "
                + $"{context.Text(door.Height)} high";
        string message = tipped
            ? $"{Named.Of(station)}, {size}, goes in only tipped onto its side: {why}"
            : $"{Named.Of(station)}, {size}, will not go in: {why}";
        string closed = $"or set it in place before the wall at {Named.Of(leftOpen!)} is closed";
        string mend = passes
            ? $"widen the door or the passage, order it knocked down, {closed}"
            : $"make {Named.Of(door)} at least {context.Text(Math.Max(solid.Broad, door.Width.Millimetres))} x "
                + $"{context.Text(Math.Max(solid.High, door.Height.Millimetres))}, order it knocked down, {closed}";
        return CheckContext.Find(this, tipped
            ? Severity.Warning
            : Severity.Error, [station.Id, door.Id], message, mend, station.Span, station.Bounds.Centre.Coordinate) with
        {
            Measured = solid.Broad,
        };
    }
}
