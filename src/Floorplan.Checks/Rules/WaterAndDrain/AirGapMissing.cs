using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.WaterAndDrain;

internal sealed class AirGapMissing : Rule
{
    private const string Gap = "air gap over a filled tank";
    private const string Diameters = "air gap in inlet diameters";

    public override string Name => "air-gap-missing";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "The end of a tap is too near the rim of the tank that it fills; or the plan guards other water against flowing back, "
        + "and a tank has neither an air gap nor a guard at the water point that serves it.";

    public override string Why
        => "When the main is drained for a repair, a tap that dips into a full tank sucks the tank into the drinking water. Air between "
            + "them cannot fail as a valve can.";

    public override string Mend
        => "End the tap above the rim by twice its inner diameter, and 20 to 25 mm (1 in) at least, and say so: `air gap 50`, `inlet 20`.";

    public override string Caution
        => "A mixed-up connection can foul the drinking water. A licensed plumber does the work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "FDA Food Code 2022, 5-202.13, as Minnesota Rules 4626.1055: twice the diameter of the inlet, and 25 mm (1 in) at least",
            Origin.FoundInPublicCopy, Force.ModelCode).In("us").Of(PlantOf.Retail),
        new Source("EN 1717, type AA, and Water Fittings Regulations 1999, UK: twice the diameter of the inlet, and 20 mm at least",
            Origin.FoundInPublicCopy, Force.Standard).In("eu", "uk"),
        new("twice the diameter of the inlet, and 20 mm at least; common practice of plumbers", Origin.CommonPractice),
        .. Published.Backflow,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Gap, 25, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Gap, 20, LimitUnit.Millimetres, Sources[1], Severity.Warning),
        new(Gap, 20, LimitUnit.Millimetres, Sources[2], Severity.Warning),
        new(Diameters, 2, LimitUnit.Count, Sources[0], Severity.Warning),
        new(Diameters, 2, LimitUnit.Count, Sources[1], Severity.Warning),
        new(Diameters, 2, LimitUnit.Count, Sources[2], Severity.Warning),
    ];

    public override string Bad => Unit(15);

    public override IReadOnlyList<LineChange> Mended => [new("air gap", "  air gap 50")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this, Gap) is not { } least || context.Limit(this, Diameters) is not { } times)
        {
            yield break;
        }

        foreach (var station in context.Plan.Stations)
        {
            if (station.AirGap is { } gap)
            {
                double byInlet = station.Inlet is { } inlet && least.SetBy is null ? times.Value * inlet.Millimetres : 0;
                double needed = Math.Max(least.Value, byInlet);
                if (gap.Millimetres < needed - Tiers.Tolerance)
                {
                    string wide = byInlet > least.Value ? $"{context.Text(station.Inlet!.Value)} inlet" : "inlet";
                    yield return CheckContext.Find(
                        this, byInlet > least.Value ? times : least, gap.Millimetres, [station.Id],
                        $"the {wide} of {Named.Of(station)} ends {context.Text(gap)} above the rim, which should be "
                            + $"{Say.SizeUp(needed, context.Plan.Units)} at least",
                        $"end the tap {Say.SizeUp(needed - gap.Millimetres, context.Plan.Units)} higher", station.Span,
                        station.Bounds.Centre.Coordinate) with
                    { LimitValue = needed };
                }
            }
        }

        var filled = new Filled(context.Facts);
        if (!filled.Speaks)
        {
            yield break;
        }

        foreach (var tank in filled.OpenTanks)
        {
            yield return CheckContext.Find(
                this, Severity.Warning, [tank.Id],
                $"nothing keeps the water in {Named.Of(tank)} from being sucked back into the pipe, though the plan guards other water",
                $"write `air gap {Say.SizeUp(Math.Max(least.Value, 50), context.Plan.Units)}` at it, or `backflow preventer` at the "
                    + "water point that fills it", tank.Span, tank.Bounds.Centre.Coordinate) with
            { Limit = $"an air gap or a guard ({PlanSources.For(context.Plan.Head, Published.Backflow).Text})" };
        }
    }

    private static string Unit(int gap) => WetBox.With("Rinse tank", $"""
        station tank "Rinse tank" in rinse
          size 900 x 600 x 850
          place against north wall, 2400 from west
          holds 200 L
          needs cold 8 L/min, drain
          air gap {gap}
        water w1 cold hot in rinse, north wall, 1900 from west, height 1200
        drain fd1 floor in rinse, 1500 from west, centred, 100
        """);
}
