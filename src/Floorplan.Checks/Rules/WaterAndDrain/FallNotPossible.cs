using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Drainage;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>
/// Slope times the longest run against the build-up that it is made in; and outlets against the low floor and the ground.
/// </summary>
internal sealed class FallNotPossible : Rule
{
    public override string Name => "fall-not-possible";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "The falls of a room need more floor build-up than there is, or a drain's outlet lies above the low floor or below the ground.";

    public override string Why
        => "A fall is made in the floor build-up: its high end is the slope times the longest run above the drain. Where the build-up is "
            + "thinner the floor is laid flatter than drawn, and water stands.";

    public override string Mend
        => "Add build-up, add a drain so that runs get shorter, or take a gentler slope; raise the unit when the outlet is below ground.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("arithmetic: rise = slope x run, to be had from the floor build-up", Origin.OwnAssumption, Force.Measured),
        new Source("COMAR 10.15.03.21, Maryland: floors slope 1/8 in a foot", Origin.FoundInPublicCopy, Force.Law).In("us-md"),
        new Source("California CURFFL 114150: floors slope 1/4 in a foot", Origin.FoundInSecondaryCopy, Force.Law)
            .In("us-ca").Of(PlantOf.Retail),
        new Source("Red Meat Regulations 2004 and Poultry Regulations 2006, reg 11(c), South Africa: floors slope 1:60 to a drain",
            Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.RedMeat, Trade.Poultry),
    ];

    public override string Bad
        => WetBox.With(
            "Thin floor",
            "water w1 cold hot in rinse, north wall, 1200 from west, height 1200\ndrain fd1 floor in rinse, 1500 from west, centred, "
                + "100\nfalls rinse 2 % to fd1", floor: "40");

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("plan \"Thin", "plan \"Thick floor\""),
        new("lining walls", "  lining walls 50, ceiling 50, floor 110"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var room in context.Facts.Drainage.Values.Where(d => d.Rise is not null))
        {
            if (TooSteep(context, room, room.Rise!) is { } steep)
            {
                yield return steep;
            }

            foreach (var level in room.Levels)
            {
                if (level.Drain is { OutletBelow: { } outlet } drain
                    && drain.Room?.Id == level.Room.Id
                    && outlet.Millimetres < level.Down - Tiers.Tolerance)
                {
                    yield return TooHigh(context, level, drain, outlet);
                }
            }
        }

        foreach (var drain in context.Plan.Services.OfType<Drain>())
        {
            if (BelowGround(context, drain) is { } low)
            {
                yield return low;
            }
        }
    }

    private Finding? TooSteep(CheckContext context, RoomDrainage drainage, Figure rise)
    {
        var room = drainage.Room;
        var falls = room.Falls!;
        double have = context.Plan.Shell.FloorBuildUp.Millimetres;

        // A shed without a floor lining has a slab, and a slab is cast to its falls.
        bool slab = context.Plan.Shell.Kind == ShellKind.Shed && have == 0;
        if (slab || rise.Value <= have + Tiers.Tolerance)
        {
            return null;
        }

        string slope = QuantityText.Of(falls.Slope, Measure.Ratio, context.Plan.Units);
        string most = context.Text(Math.Floor(have / drainage.Run.Value * 1000) / 1000, Measure.Ratio);
        string other = drainage.Drains.Count > drainage.Takes.Count
            ? $", write `falls {room.Id} {slope}` without a drain so that the floor runs to the nearest"
            : "";
        return CheckContext.Find(
            this, Severity.Error, [room.Id, .. drainage.Takes.Select(d => d.Id)],
            $"the falls of {Named.Of(room)} rise {rise.Text} ({slope} over {drainage.Run.Text}), and the floor build-up is "
                + $"{context.Text(have)}",
            $"make the floor lining {Say.SizeUp(rise.Value, context.Plan.Units)}, add a drain near "
                + $"{Say.Place(drainage.Farthest, context.Plan.Units)}{other}, or slope the floor {most}",
            falls.Span, drainage.Farthest) with
        {
            Limit = $"the build-up of the floor in this plan ({Sources[0].Text})",
            Measured = rise.Value,
            LimitValue = have,
            Figures = [rise, drainage.Run, .. drainage.Levels.Where(l => drainage.Takes.Contains(l.Drain)).Select(l => l.Level)],
        };
    }

    private Finding TooHigh(CheckContext context, FloorLevel level, Drain drain, Length outlet) => CheckContext.Find(
        this, Severity.Error, [drain.Id, level.Room.Id],
        $"the outlet of {drain.Id} lies {context.Text(outlet)} below the floor, and the falls bring the floor down "
            + $"{context.Text(level.Down)} there",
        $"lower the outlet by {Say.SizeUp(level.Down - outlet.Millimetres, context.Plan.Units)}, or take a gentler slope", drain.Span,
        drain.At.Coordinate)
        with
    {
        Limit = $"water runs down ({Sources[0].Text})",
        Measured = outlet.Millimetres,
        LimitValue = level.Down,
        Figures = [level.Level],
    };

    private Finding? BelowGround(CheckContext context, Drain drain)
    {
        var shell = context.Plan.Shell;

        // Under a shed pipes lie in the ground as a matter of course; under a box or a trailer they hang below it.
        if (drain.OutletBelow is not { } outlet
            || shell.GroundBelowFloor is not { } ground
            || shell.Kind == ShellKind.Shed
            || outlet <= ground)
        {
            return null;
        }

        return CheckContext.Find(
            this, Severity.Error, [drain.Id],
            $"the outlet of {drain.Id} lies {context.Text(outlet)} below the floor, and the ground is at {context.Text(ground)}",
            $"raise the unit by {context.Text(outlet - ground)}, or bring the outlet up", drain.Span, drain.At.Coordinate)
            with
        { Limit = "the ground in this plan", Measured = outlet.Millimetres, LimitValue = ground.Millimetres };
    }
}
