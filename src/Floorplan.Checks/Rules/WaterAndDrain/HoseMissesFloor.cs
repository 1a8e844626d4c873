using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>
/// Washed floor that lies farther from every hose than the hose is long, on the way that a person drags it round what stands there.
/// </summary>
internal sealed class HoseMissesFloor : Rule
{
    /// <summary>A jet cleans this far past the nozzle; own assumption, in mm.</summary>
    private const double Jet = 2000;

    public override string Name => "hose-misses-floor";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "A part of a washed floor is out of reach of every hose, measured along the floor round what stands on it. A plan without "
            + "hoses is not looked at.";

    public override string Why => "What the jet does not reach is swept at best. Behind the last bench is where it starts to smell.";

    public override string Mend => "Take a longer hose, or hang another one on a water point nearer to the floor that is missed.";

    public override string? Caution => "Hot water scalds and hoses trip people: hang them up after use.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "9 CFR 354.224, US CFR, for rabbits; for other animals advice: hose points so that all parts of the floors can be cleaned",
            Origin.FoundInPublicCopy, Force.Guidance).In("us").For([.. Trades.Meat]),
        new("a jet cleans 2 m past the nozzle", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("washed floor past the end of a hose", Jet, LimitUnit.Millimetres, Sources[1], Severity.Warning)];

    public override string Bad => """
        plan "A hose at one end"
          units metric
        shell shed 12000 x 3000 x 2600
        room wash "Wash" dirty from west to east
        door d1 wash to outside, south wall, centred, 1000 x 2050, swings out, closes itself
        water w1 cold in wash, north wall, 500 from west, height 1200
        hose hz1 on w1, 5 m
        drain fd1 floor in wash, centred, 3000 from west, 100
        drain fd2 floor in wash, centred, 9000 from west, 100
        """;

    public override IReadOnlyList<LineChange> Mended => [new("hose hz1", "hose hz1 on w1, 10 m")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.HoseCover.Missed.Count == 0 || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var (room, hose, at, past) in context.Facts.HoseCover.Missed)
        {
            if (past.Value <= limit.Value + Tiers.Tolerance)
            {
                continue;
            }

            string length = context.Walk(hose.Length!.Value.Millimetres);
            string more = context.Walk(Math.Ceiling((past.Value - limit.Value) / 100) * 100);
            yield return double.IsInfinity(past.Value)
                ? CheckContext.Find(
                    this, limit, past, [room.Id, hose.Id], $"no hose reaches the floor of {Named.Of(room)}",
                    $"add a hose on a water point in {Named.Of(room)}", hose.Span, at)
                : CheckContext.Find(
                    this, limit, past, [room.Id, hose.Id],
                    $"the floor of {Named.Of(room)} goes on {past.Text} past the end of the nearest hose, {hose.Id} of {length}",
                    $"take one {more} longer, or add a hose near {Say.Place(at, context.Plan.Units)}", hose.Span, at);
        }
    }
}
