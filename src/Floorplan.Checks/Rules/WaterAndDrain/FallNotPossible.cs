using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Slope times the longest run against the build-up that it is made in; and outlets against the ground.</summary>
public sealed class FallNotPossible : Rule
{
    public override string Name => "fall-not-possible";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The falls of a room need more floor build-up than there is, or a drain's outlet lies below the ground.";

    public override string Why => "A fall is made in the floor build-up: its high end is the slope times the longest run above the drain. Where the build-up is thinner the floor is laid flatter than drawn, and water stands.";

    public override string Mend => "Add build-up, add a drain so that runs get shorter, or take a gentler slope; raise the unit when the outlet is below ground.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("arithmetic: rise = slope x run, to be had from the floor build-up", Origin.OwnAssumption),
        new("usual floor slopes: 1/8 in/ft (COMAR 10.15.03.21), 1/4 in/ft (CURFFL 114150), 1:60 (Poultry Regulations 2006 reg 11, South Africa)", Origin.FoundInPublicCopy),
    ];

    public override string Bad => WetBox.With("Thin floor", "water w1 cold in rinse, north wall, 1200 from west, height 1200\ndrain fd1 floor in rinse, 1500 from west, centred, 100\nfalls rinse 2 % to fd1", floor: "40");

    public override string Good => WetBox.With("Thick floor", "water w1 cold in rinse, north wall, 1200 from west, height 1200\ndrain fd1 floor in rinse, 1500 from west, centred, 100\nfalls rinse 2 % to fd1", floor: "110");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var shell = context.Plan.Shell;
        foreach (var room in context.Plan.Rooms)
        {
            var drains = context.Plan.Services.Where(p => p.Kind == ServiceKind.Drain && p.Room?.Id == room.Id).ToList();
            if (room.Falls is not { } falls || drains.Count == 0)
            {
                continue;
            }

            var (at, mm) = FarthestFloor.From(room.Floor, [.. drains.Select(d => d.At.Coordinate)]);
            double rise = falls.Slope * mm;
            double have = shell.FloorBuildUp.Millimetres;
            if (rise > have + Tiers.Tolerance)
            {
                yield return CheckContext.Find(
                    this, Severity.Error, [room.Id, .. drains.Select(d => d.Id)],
                    FormattableString.Invariant($"the falls of {Named.Of(room)} rise {context.Text(rise)} ({falls.Slope * 100:0.##} % over {context.Walk(mm)}), and the floor build-up is {context.Text(have)}"),
                    $"make the floor lining {Say.SizeUp(rise, context.Plan.Units)}, add a drain near {Say.Place(at, context.Plan.Units)}, or slope the floor {FormattableString.Invariant($"{Math.Floor(have / mm * 1000) / 10:0.#}")} %",
                    falls.Span, at) with
                { Measured = rise, LimitValue = have };
            }
        }

        foreach (var drain in context.Plan.Services.Where(p => p.Kind == ServiceKind.Drain))
        {
            if (drain.OutletBelow is { } outlet && shell.GroundBelowFloor is { } ground && shell.Kind != ShellKind.Shed && outlet > ground)
            {
                yield return CheckContext.Find(
                    this, Severity.Error, [drain.Id], $"the outlet of {drain.Id} lies {context.Text(outlet)} below the floor, and the ground is at {context.Text(ground)}",
                    $"raise the unit by {context.Text(outlet - ground)}, or bring the outlet up", drain.Span, drain.At.Coordinate)
                    with
                { Measured = outlet.Millimetres, LimitValue = ground.Millimetres };
            }
        }
    }
}
