using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Ground;

/// <summary>Wind on the long side of an empty container that is only set down.</summary>
/// <param name="Overturning">Weight against wind about the lee edge; below 1 it falls over.</param>
/// <param name="Friction">That keeps it from sliding.</param>
/// <param name="FallsAt">Wind speed, said as the plan's.</param>
/// <param name="HoldDown">All tie-downs of the windward side together.</param>
/// <param name="HoldStill">All together, level.</param>
internal sealed record WindOnBox(
    Figure Pressure, Figure Push, Figure Overturning, Figure Friction, Figure FallsAt, Figure HoldDown, Figure HoldStill)
{
    /// <summary>What weight is asked to be against wind.</summary>
    public const double Asked = 1.5;

    /// <summary>Of steel or concrete on sandy or silty ground.</summary>
    public const double Ground = 0.25;

    /// <summary>Windward and lee side of a long wall together.</summary>
    private const double Net = 1.3;

    private static readonly Source Eu = new(
        "EN 1991-1-4, 4.3 to 4.5, terrain category II, open land, air of 1.25 kg/m³", Origin.FoundInPublicCopy);

    private static readonly Source Us = new("ASCE 7, exposure C, direction factor 0.85, flat ground", Origin.FoundInSecondaryCopy);
    private static readonly Source Sides = new("EN 1991-1-4 Table 7.1: +0.8 and -0.5 on the long walls of a box", Origin.FromMemory);
    private static readonly Source Statics = new("statics: moments about the lee edge, no factors in it", Origin.CommonPractice);
    private static readonly Source Safety = new(
        "1.5 against sliding and overturning, as 24 CFR 3280.306 asks of homes that are set down", Origin.FromMemory);

    private static readonly Source Rubs = new("IBC 2012 Table 1806.2: friction 0.25 on sand and silt", Origin.FoundInPublicCopy);

    /// <summary>Null where the plan says no wind, or nothing weighs.</summary>
    public static WindOnBox? Of(PlanFacts facts, Workings work)
    {
        var plan = facts.Plan;
        if (plan.Head.Wind is not { Speed.Base: > 0 and var speed } wind || facts.Weight.Empty is not { Value: > 0 } weight
            || facts.CentreEmpty is not { } centre)
        {
            return null;
        }

        work.Add(centre.North);

        var shell = plan.Shell;
        var (box, height) = (shell.Outside.EnvelopeInternal, (shell.Top - shell.DatumHeight).Metres);
        var (length, width) = (box.Width / 1000, box.Height / 1000);
        double top = shell.GroundBelowFloor is { } below ? Math.Max(height, (shell.Top + below).Metres) : height;
        var pressure = PressureOf(plan, wind, top, work);
        var sides = FigureInput.Said(
            "sides of the box", string.Join(" x ", new[] { length, width, height }.Select(Metres)), shell.Span);
        double newtons = pressure.Value * Net * length * height;
        var push = work.Of(
            "push of the wind on the long side", Figure.WholePlan, newtons, Measure.Force, "pressure x 1.3 x length x height",
            $"{pressure.Text} x {Net} x {Metres(length)} x {Metres(height)}", Sides, FigureInput.Of(pressure),
            FigureInput.Taken("both long walls together", "1.3", Sides), sides);
        double lever = Math.Max(0, (width / 2) - Math.Abs(centre.North.Value / 1000));
        double ratio = SetDownBox.Overturning(weight.Value, lever, newtons, height);
        var overturning = Number(
            "weight against wind, overturning", ratio, "weight x gravity x lever / (push x height / 2)",
            $"{weight.Text} x 9.80665 m/s² x {Metres(lever)} / ({push.Text} x {Metres(height)} / 2)", FigureInput.Of(centre.North), sides);
        double rubs = SetDownBox.Friction(weight.Value, newtons);
        var friction = Number(
            "friction that it needs", rubs, "push / (weight x gravity)", $"{push.Text} / ({weight.Text} x 9.80665 m/s²)");
        double falls = speed * Math.Sqrt(ratio);
        var fallsAt = work.Of(
            "wind that it falls over in", Figure.WholePlan, falls, Measure.WindSpeed, "wind x square root of the ratio",
            $"{QuantityText.Of(wind.Speed, work.Units)} x √{overturning.Text}", Statics, FigureInput.Of(overturning), Said(wind, work));
        double down = SetDownBox.HoldDown(weight.Value, lever, newtons, height, width, Asked);
        double still = SetDownBox.HoldStill(weight.Value, newtons, Ground, Asked);
        return new WindOnBox(
            pressure, push, overturning, friction, fallsAt,
            work.Of(
                "tie-downs of the windward side", Figure.WholePlan, down, Measure.Force,
                "(1.5 x push x height / 2 - weight x gravity x lever) / width, nothing below zero",
                $"({Asked} x {push.Text} x {Metres(height)} / 2 - {weight.Text} x 9.80665 m/s² x {Metres(lever)}) / {Metres(width)}",
                Safety, FigureInput.Of(push), FigureInput.Of(weight)),
            work.Of(
                "hold against sliding", Figure.WholePlan, still, Measure.Force,
                "1.5 x push - friction x weight x gravity, nothing below zero",
                $"{Asked} x {push.Text} - {Ground} x {weight.Text} x 9.80665 m/s²", Safety, FigureInput.Of(push), FigureInput.Of(weight),
                FigureInput.Taken("friction", QuantityText.Plain(Ground), Rubs)));

        string Metres(double metres) => WorkingText.Long(metres * 1000, work.Units);

        Figure Number(string name, double value, string formula, string substituted, params ReadOnlySpan<FigureInput> more) => work.Of(
            name, Figure.WholePlan, value, QuantityKind.Ratio, QuantityText.Plain(value), formula, substituted, Statics,
            [FigureInput.Of(push), FigureInput.Of(weight), .. more]);
    }

    private static FigureInput Said(Wind wind, Workings work)
        => FigureInput.Said("wind", QuantityText.Of(wind.Speed, work.Units), wind.Span);

    private static Figure PressureOf(Plan plan, Wind wind, double top, Workings work)
    {
        double speed = wind.Speed.Base;
        string height = WorkingText.Long(top * 1000, work.Units);
        string text = work.Fine(speed, Measure.WindSpeed);
        if (plan.Head.Code == CodeChoice.Us)
        {
            double kz = AmericanWind.Exposure(top);
            return work.Of(
                "pressure of the wind", Figure.WholePlan, AmericanWind.Pressure(speed, kz), QuantityKind.Pressure,
                work.Fine(AmericanWind.Pressure(speed, kz), Measure.SurfacePressure),
                "0.613 x Kz x Kd x V² (Pa, m/s; 0.00256 in lb/sq ft, mph)",
                $"Kz of {height} {QuantityText.Plain(kz, 3)}, Kd {AmericanWind.Direction}, V {text}", Us, Said(wind, work));
        }

        var (rough, least) = EuropeanWind.OpenLand;
        double exposure = EuropeanWind.Exposure(rough, least, top);
        return work.Of(
            "pressure of the wind", Figure.WholePlan, EuropeanWind.Pressure(speed, exposure), QuantityKind.Pressure,
            work.Fine(EuropeanWind.Pressure(speed, exposure), Measure.SurfacePressure),
            "air / 2 x wind² x exposure", $"1.25 kg/m³ / 2 x ({text})² x {QuantityText.Plain(exposure, 3)} at {height}", Eu,
            Said(wind, work));
    }
}
