using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Tanks that their names say are for waste water and for fresh water, in a unit that carries both.</summary>
internal sealed class WasteTankTooSmall : Rule
{
    private const string Share = "waste water tank against the fresh water";

    private static readonly string[] WasteWords = ["waste water", "wastewater", "waste tank", "grey water", "gray water", "greywater"];
    private static readonly string[] FreshWords = ["fresh water", "freshwater", "clean water", "potable water", "drinking water"];

    public override string Name => "waste-tank-too-small";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The waste water tank of a unit holds too little beside its fresh water tank.";

    public override string Why => "All water that comes in goes out as waste, with what was washed off; a full tank spills on the road.";

    public override string Mend => "Take a larger waste tank, or a smaller one for fresh water.";

    public override IReadOnlyList<Source> Sources { get; } =
        [new("rules for mobile food units in many US states: 15 % larger than the fresh water tank", Origin.CommonPractice)];

    public override IReadOnlyList<RuleLimit> Limits => [new(Share, 115, LimitUnit.Percent, Sources[0], Severity.Warning)];

    public override string Bad => WetBox.With(
        "Tanks of one size", """
        water w1 cold hot in rinse, north wall, 1200 from west, height 1200
        drain fd1 floor in rinse, 1500 from west, centred, 100
        bin fresh "Fresh water tank" 200 L in rinse, 600 x 600 x 700, against north wall, 2500 from west
        bin waste "Waste water tank" 200 L in rinse, 600 x 600 x 700, against north wall, 3500 from west
        """);

    public override IReadOnlyList<LineChange> Mended =>
        [new("bin waste", "bin waste \"Waste water tank\" 240 L in rinse, 600 x 600 x 700, against north wall, 3500 from west")];

    public override bool AppliesTo(Plan plan) => plan.Stations.Any(s => Is(s, WasteWords)) && plan.Stations.Any(s => Is(s, FreshWords));

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        double fresh = Volume(context.Plan, FreshWords);
        double waste = Volume(context.Plan, WasteWords);
        if (fresh <= 0 || waste <= 0 || context.Limit(this) is not { } limit || waste / fresh * 100 >= limit.Value - 1e-6)
        {
            yield break;
        }

        var tank = context.Plan.Stations.First(s => Is(s, WasteWords));
        yield return CheckContext.Find(
            this, limit, waste / fresh * 100, [tank.Id],
            $"{Named.Of(tank)} holds {context.Text(waste, Measure.Liquid)}, and the fresh water is {context.Text(fresh, Measure.Liquid)}",
            $"take a waste tank of {context.Text(fresh * limit.Value / 100, Measure.Liquid)} or more", tank.Span,
            tank.Footprint.Centroid.Coordinate);
    }

    private static double Volume(Plan plan, string[] words) => plan.Stations.Where(s => Is(s, words)).Sum(s => s.Volume?.Base ?? 0);

    private static bool Is(Station station, string[] words)
        => station.Volume is not null && Array.Exists(words, w => station.Label.Contains(w, StringComparison.OrdinalIgnoreCase));
}
