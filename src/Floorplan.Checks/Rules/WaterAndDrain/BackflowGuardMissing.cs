using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Checks.Rules.WaterAndDrain;

internal sealed class BackflowGuardMissing : Rule
{
    public override string Name => "backflow-guard-missing";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "The plan guards some of its water against flowing back, and a hose has no guard, nor has the point that it hangs on. "
        + "A plan that counts a crew, has hoses or tanks, and speaks of no guard at all gets one note.";

    public override string Why
        => "A hose left in a bucket or on a dirty floor empties it into the drinking water when the pressure falls. A vacuum breaker at "
            + "the tap lets air in instead.";

    public override string Mend
        => "Fit a vacuum breaker at the tap and write `vacuum breaker` at the hose or its water point; or write `backflow preventer` "
            + "where one is fitted.";

    public override string Caution
        => "A mixed-up connection can foul the drinking water. A licensed plumber does the work; local codes prevail.";

    public override IReadOnlyList<Source> Sources => Published.Backflow;

    public override string Bad => Unit("");

    public override IReadOnlyList<LineChange> Mended => [new("hose hz2", "hose hz2 on w2, 6 m, vacuum breaker")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var filled = new Filled(context.Facts);
        var hoses = filled.OpenHoses.ToList();
        if (filled.Speaks)
        {
            foreach (var hose in hoses)
            {
                string at = hose.OnId is { } on ? $"{hose.Id} or {on}" : hose.Id;
                yield return CheckContext.Find(
                    this, Severity.Warning, [hose.Id],
                    $"hose {hose.Id} has no guard against water flowing back, though the plan guards other water",
                    $"write `vacuum breaker` at {at} and have it fitted", hose.Span, hose.At.Coordinate) with
                { Limit = $"a guard at each hose ({context.SourceOf(this).Text})" };
            }
        }
        else if (context.Plan.Day is { Crew.Count: > 0 })
        {
            var tanks = filled.OpenTanks.ToList();
            string[] things = [.. hoses.Select(h => h.Id), .. tanks.Select(t => t.Id)];
            if (things.Length > 0)
            {
                var span = hoses.Count > 0 ? hoses[0].Span : tanks[0].Span;
                yield return CheckContext.Find(
                    this, Severity.Note, things, $"the plan says nothing that keeps water from flowing back at {Named.List(things)}",
                    "write `vacuum breaker` at each hose and `air gap` at each tank, as they are to be fitted", span);
            }
        }
    }

    private static string Unit(string guard) => WetBox.With("Two hoses", $"""
        water w1 cold hot in rinse, north wall, 1200 from west, height 1200
        water w2 cold hot in rinse, south wall, 300 from east, height 1200
        hose hz1 on w1, 6 m, vacuum breaker
        hose hz2 on w2, 6 m{guard}
        drain fd1 floor in rinse, 1500 from west, centred, 100
        """);
}
