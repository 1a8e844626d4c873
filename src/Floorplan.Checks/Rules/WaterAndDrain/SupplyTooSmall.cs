using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Water.Pipes;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Pressure that is left at the worst outlet, and said pipe sizes at water points in which water would run too fast.</summary>
internal sealed class SupplyTooSmall : Rule
{
    /// <summary>Pa, in a reckoning of many steps.</summary>
    private const double Rounding = 1;

    public override string Name => "supply-too-small";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "Too little pressure is left at an outlet, or water runs too fast in the pipe to a water point.";

    public override string Why => "Taps that are open together then give a trickle, and fast water hammers and wears bends through.";

    public override string Mend => "Take wider pipes, fewer outlets at a time, or a pump; `floorplan size --working` has each pipe.";

    public override IReadOnlyList<Source> Sources { get; } = [WaterPiping.LeastSource, TubeSize.VelocitySource];

    public override string Bad => WetBox.With(
        "Weak main", """
        water w1 cold hot in rinse, north wall, 1200 from west, height 1200
        hole water-in "Cold water" in rinse, north wall, 5 m from west, height 150, 40
        drain fd1 floor in rinse, 1500 from west, centred, 100
        """).Replace("  code us\n", "  code us\n  mains 0.6 bar, 10 C\n", StringComparison.Ordinal);

    public override IReadOnlyList<LineChange> Mended => [new("mains", "  mains 3 bar, 10 C")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.WaterPiping is not { } water)
        {
            yield break;
        }

        if (water.Pressure is { } left && left.Value < WaterPiping.LeastPressure - Rounding)
        {
            yield return Weak(context, water, left);
        }

        var pipes = water.Network.Pipes.ToLookup(p => p.To, StringComparer.Ordinal);
        foreach (var point in context.Plan.Services.OfType<WaterPoint>().Where(p => p.Size is not null))
        {
            foreach (var pipe in pipes[point.Id])
            {
                if (TooFast(context, point, pipe) is { } fast)
                {
                    yield return fast;
                }
            }
        }
    }

    private Finding Weak(CheckContext context, WaterPiping water, Figure left)
    {
        string needs = context.Text(WaterPiping.LeastPressure, Measure.Pressure);
        string has = left.Value <= 0 ? "no water comes" : $"{left.Text} is left";
        return CheckContext.Find(
            this, Sources[0].Heaviest, [water.WorstAt], $"{has} at {water.WorstAt} when all draw at once; it needs {needs}",
            $"bring the water in with {context.Text(Mains(context.Plan) + WaterPiping.LeastPressure - left.Value, Measure.Pressure)} or "
                + "more, shorten its pipes, or let less run at a time", context.Plan.Head.Mains!.Span) with
        {
            Limit = Sources[0].Text,
            Measured = left.Value,
            LimitValue = WaterPiping.LeastPressure,
            Figures = [left],
        };
    }

    private static double Mains(Plan plan) => plan.Head.Mains!.Pressure.Base;

    private Finding? TooFast(CheckContext context, WaterPoint point, SizedPipe pipe)
    {
        // What the plan says is the size that a pipe is bought by; its bore is that of the tube of this size.
        double fastest = pipe.IsHot ? TubeSize.FastestHot : TubeSize.FastestCold;
        if (TubeSize.Bought(context.Plan.Units, point.Size!.Value) is not { } tube
            || HazenWilliams.Velocity(pipe.Flow.Value, tube.Bore) is var speed && speed <= fastest * (1 + 1e-9))
        {
            return null;
        }

        return CheckContext.Find(
            this, Sources[1].Heaviest, [point.Id],
            $"water runs at {context.Text(speed, Measure.Speed)} in the pipe of {tube.Name} to {point.Id}, which brings {pipe.Flow.Text}",
            pipe.Tube is { } better ? $"take {better.Name}" : "lead two pipes to it", point.Span, point.At.Coordinate) with
        {
            Limit = Sources[1].Text,
            Measured = speed,
            LimitValue = fastest,
            Figures = [pipe.Flow],
        };
    }
}
