using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>What the heaters of the plan give in an hour against the hour with the highest draw.</summary>
internal sealed class HotWaterShort : Rule
{
    /// <summary>A share by which sums may differ in reckoning.</summary>
    private const double Rounding = 1e-6;

    public override string Name => "hot-water-short";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The heater gives less hot water than the hour with the highest draw takes.";

    public override string Why
        => "When the store runs cold, scald tanks cool, hands are washed in cold water and wash-down does not clean.";

    public override string Mend
        => "Take a larger store or more power, or draw less at a time. `floorplan size` shows which hour it is and what would do.";

    public override string? Caution
        => "Hot water scalds. A licensed plumber and electrician choose and connect the heater by the local code.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "heat balance: 70 % of the store and what its power heats in an hour, against the day of the plan",
            Origin.OwnAssumption, Force.Measured),
    ];

    public override string Bad => WetBox.With(
        "Cold by noon", """
        water w1 cold hot in rinse, north wall, 1200 from west, height 1200
        hose hz1 on w1, 5 m, vacuum breaker
        drain fd1 floor in rinse, 1500 from west, centred, 100
        heater wh1 in rinse, west wall, 300 from south, height 1500, 2 kW 30 L
        flow product
          outside -> d1 -> bench -> d1 -> outside by hand
        day
          target 20 crates/h for 2 h
          crew rinse 1
          wash-down 1 h
          elsewhere 1 toilet, changing room
        """).Replace("worker south\n", "worker south\n  work 60 s each\n", StringComparison.Ordinal)
        .Replace(
            "dirty from west to east\n",
            "dirty from west to east\n  finish floor \"resin, coved\", walls \"panel\", ceiling \"panel\"\n", StringComparison.Ordinal);

    public override IReadOnlyList<LineChange> Mended =>
        [new("heater wh1", "heater wh1 in rinse, west wall, 300 from south, height 1500, 9 kW 500 L")];

    public override bool AppliesTo(Plan plan) => plan.Services.OfType<Heater>().Any();

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.HotWaterSized is not { Hour: { } hour, Heater: { First: { } heater, Gives: { } gives } }
            || gives.Value >= hour.Litres.Value * (1 - Rounding))
        {
            yield break;
        }

        yield return CheckContext.Find(
            this, Severity.Warning, [heater.Id],
            $"heater {heater.Id} gives {gives.Text} of hot water in an hour, and the highest hour ({hour.When}) takes {hour.Litres.Text}",
            $"take a store of {context.Text(hour.Litres.Value / Sizing.Water.Hot.SaidHeater.UsableShare, Measure.Liquid)}, or more power",
            heater.Span, heater.At.Coordinate) with
        {
            Limit = $"the hour with the highest draw in this plan ({Sources[0].Text})",
            Measured = gives.Value,
            LimitValue = hour.Litres.Value,
            Figures = [gives, hour.Litres],
        };
    }
}
