using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>The temperature that a sterilizer's <c>needs hot … at</c> asks for; one that heats its own water asks for none.</summary>
internal sealed class SterilizerTooCool : Rule
{
    private const double Metric = 82;
    private static readonly double Customary = InchPound.Celsius(180);

    /// <summary>A tenth of a degree is a rounding of the plan's.</summary>
    private const double Tolerance = 0.1;

    public override string Name => "sterilizer-too-cool";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says => "A sterilizer is fed with water that is not hot enough to kill what is on a knife, or nothing heats it.";

    public override string Why
        => "At 70 °C (158 °F) a knife looks as clean as at 82 °C (180 °F), and carries on what it cut last. A long pipe cools "
            + "the water "
            + "further.";

    public override string Mend
        => "Feed it at 82 °C (180 °F), let it heat its own water, or show the inspector another way that does as well.";

    public override string? Caution
        => "Water of 82 °C (180 °F) scalds. A licensed plumber and electrician do the work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        Published.EuropeanSterilizers,
        new Source(
            "9 CFR 354.224, US CFR, for rabbits under voluntary inspection, advice for other animals: water of 180 °F to sanitize with",
            Origin.FoundInPublicCopy, Force.Guidance).In("us").For([.. Trades.Meat]),
        Published.SouthAfricanSterilizers,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new("water of a sterilizer", Metric, LimitUnit.Celsius, Sources[0], Severity.Warning),
        new("water of a sterilizer", Customary, LimitUnit.Celsius, Sources[1], Severity.Note),
        new("water of a sterilizer", Metric, LimitUnit.Celsius, Sources[2], Severity.Warning),
    ];

    public override string Bad => """
        plan "Pheasant unit"
          units metric
          code eu
          trade poultry
        shell shed 6000 x 3000 x 2500
        room draw "Drawing" clean from west to east
        door d1 draw to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        water w1 hot in draw, north wall, 2500 from west, height 1100
        drain fd1 floor in draw, 2500 from west, centred, 100
        sink z1 sterilizer in draw
          size  300 x 300 x 900
          place against north wall, 2200 from west
          needs hot 2 L/min at 65 C
        """;

    public override IReadOnlyList<LineChange> Mended => [new("needs hot", "  needs hot 2 L/min at 82 C")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var sink in context.Plan.Stations.Where(s => s.IsSterilizer))
        {
            if (sink.Needs.FirstOrDefault(n => n is { Kind: NeedKind.HotWater, At: not null }) is { At: { } fed } need
                && fed.Base < limit.Value - Tolerance)
            {
                yield return CheckContext.Find(
                    this, limit, fed.Base, [sink.Id], $"sterilizer {sink.Id} is fed at {context.Temperature(fed.Base)}",
                    $"write `needs hot … at {context.Temperature(limit.Value)}`, or let it heat its own water: `needs power`", need.Span,
                    sink.Bounds.Centre.Coordinate);
            }
            else if (!sink.Needs.Any(n => n.Kind is NeedKind.HotWater or NeedKind.Power or NeedKind.Steam))
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [sink.Id],
                    $"nothing heats sterilizer {sink.Id}: it has neither hot water nor power",
                    $"write `needs power` if it heats its own water, or `needs hot … at {context.Temperature(limit.Value)}`", sink.Span,
                    sink.Bounds.Centre.Coordinate) with
                { Limit = limit.Text };
            }
        }
    }
}
