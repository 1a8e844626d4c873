using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Slope times the longest run against the build-up that it is made in; and outlets against the low floor and the ground.</summary>
internal sealed class FallNotPossible : Rule
{
    public override string Name => "fall-not-possible";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The falls of a room need more floor build-up than there is, or a drain's outlet lies above the low floor or below the ground.";

    public override string Why => "A fall is made in the floor build-up: its high end is the slope times the longest run above the drain. Where the build-up is thinner the floor is laid flatter than drawn, and water stands.";

    public override string Mend => "Add build-up, add a drain so that runs get shorter, or take a gentler slope; raise the unit when the outlet is below ground.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("arithmetic: rise = slope x run, to be had from the floor build-up", Origin.OwnAssumption),
        new("usual floor slopes: 1/8 in/ft (COMAR 10.15.03.21), 1/4 in/ft (CURFFL 114150), 1:60 (Poultry Regulations 2006 reg 11, South Africa)", Origin.FoundInPublicCopy),
    ];

    public override string Bad => WetBox.With("Thin floor", "water w1 cold hot in rinse, north wall, 1200 from west, height 1200\ndrain fd1 floor in rinse, 1500 from west, centred, 100\nfalls rinse 2 % to fd1", floor: "40");

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("plan \"Thin", "plan \"Thick floor\""),
        new("lining walls", "  lining walls 50, ceiling 50, floor 110"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var byRoom = context.Plan.Services.OfType<Drain>().ToLookup(p => p.Room?.Id);
        foreach (var room in context.Plan.Rooms)
        {
            var drains = byRoom[room.Id].ToList();
            if (room.Falls is not { } falls || drains.Count == 0)
            {
                continue;
            }

            var (at, run) = FarthestFloor.From(room.Floor, [.. drains.Select(d => d.At.Coordinate)]);
            double rise = falls.Slope * run;
            if (TooSteep(context, room, falls, drains, at, run) is { } steep)
            {
                yield return steep;
            }

            foreach (var drain in drains)
            {
                if (drain.OutletBelow is { } outlet && outlet.Millimetres < rise - Tiers.Tolerance)
                {
                    yield return TooHigh(context, room, drain, outlet, rise);
                }
            }
        }

        foreach (var drain in byRoom.SelectMany(g => g))
        {
            if (BelowGround(context, drain) is { } low)
            {
                yield return low;
            }
        }
    }

    private Finding? TooSteep(CheckContext context, Room room, Falls falls, List<Drain> drains, Coordinate at, double run)
    {
        double rise = falls.Slope * run;
        double have = context.Plan.Shell.FloorBuildUp.Millimetres;

        // A shed without a floor lining has a slab, and a slab is cast to its falls.
        bool slab = context.Plan.Shell.Kind == ShellKind.Shed && have == 0;
        if (slab || rise <= have + Tiers.Tolerance)
        {
            return null;
        }

        return CheckContext.Find(
            this, Severity.Error, [room.Id, .. drains.Select(d => d.Id)],
            $"the falls of {Named.Of(room)} rise {context.Text(rise)} ({context.Text(falls.Slope, Measure.Ratio)} over {context.Walk(run)}), and the floor build-up is {context.Text(have)}",
            $"make the floor lining {Say.SizeUp(rise, context.Plan.Units)}, add a drain near {Say.Place(at, context.Plan.Units)}, or slope the floor {context.Text(Math.Floor(have / run * 1000) / 1000, Measure.Ratio)}",
            falls.Span, at) with
        { Limit = $"the build-up of the floor in this plan ({Sources[0].Text})", Measured = rise, LimitValue = have };
    }

    private Finding TooHigh(CheckContext context, Room room, Drain drain, Length outlet, double rise) => CheckContext.Find(
        this, Severity.Error, [drain.Id, room.Id],
        $"the outlet of {drain.Id} lies {context.Text(outlet)} below the floor, and the falls bring the floor down {context.Text(rise)} there",
        $"lower the outlet by {Say.SizeUp(rise - outlet.Millimetres, context.Plan.Units)}, or take a gentler slope", drain.Span, drain.At.Coordinate)
        with
    { Limit = $"water runs down ({Sources[0].Text})", Measured = outlet.Millimetres, LimitValue = rise };

    private Finding? BelowGround(CheckContext context, Drain drain)
    {
        var shell = context.Plan.Shell;

        // Under a shed pipes lie in the ground as a matter of course; under a box or a trailer they hang below it.
        if (drain.OutletBelow is not { } outlet || shell.GroundBelowFloor is not { } ground || shell.Kind == ShellKind.Shed || outlet <= ground)
        {
            return null;
        }

        return CheckContext.Find(
            this, Severity.Error, [drain.Id], $"the outlet of {drain.Id} lies {context.Text(outlet)} below the floor, and the ground is at {context.Text(ground)}",
            $"raise the unit by {context.Text(outlet - ground)}, or bring the outlet up", drain.Span, drain.At.Coordinate)
            with
        { Limit = "the ground in this plan", Measured = outlet.Millimetres, LimitValue = ground.Millimetres };
    }
}
