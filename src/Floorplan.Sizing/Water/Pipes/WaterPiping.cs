using Floorplan.Language.Quantities;
using Floorplan.Sizing.Water.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>Water that is drawn at once, its pipes, and the pressure that is left: nothing that needs the day.</summary>
/// <param name="AtOnce">By fixture units, m3/s.</param>
/// <param name="Pressure">At the worst outlet, Pa; null where the plan does not say the pressure of the main.</param>
/// <param name="WorstAt">Id of the worst outlet.</param>
/// <param name="Figures">In the order in which they are worked out.</param>
public sealed record WaterPiping(
    IReadOnlyList<WaterDraw> Draws, Figure AtOnce, PipeNetwork Network, Figure? Pressure, string WorstAt, IReadOnlyList<Figure> Figures)
{
    /// <summary>8 psi, what a tap needs to give its flow.</summary>
    public const double LeastPressure = 8 * InchPound.PascalsPerPoundPerSquareInch;

    public static Source LeastSource { get; } =
        new("IPC 2018 Table 604.3: 8 psi at lavatories, sinks and sillcocks", Origin.FoundInPublicCopy, Force.ModelCode);

    private static readonly Source Own = new("pressure of the main less what height and friction take", Origin.OwnAssumption);

    /// <summary>Null where nothing takes water.</summary>
    public static WaterPiping? Of(PlanFacts facts)
    {
        var draws = WaterDraw.Of(facts);
        if (draws.Count == 0)
        {
            return null;
        }

        var w = new Workings(facts.Plan.Units);
        var atOnce = WaterPeak.ByUnits(draws, w);
        var network = PipeNetwork.Of(facts, draws, atOnce, w);
        var (pressure, worst) = Left(facts, network, w);
        return new WaterPiping(draws, atOnce, network, pressure, worst, w.Figures);
    }

    private static (Figure? Pressure, string At) Left(PlanFacts facts, PipeNetwork network, Workings w)
    {
        if (facts.Plan.Head.Mains is not { } mains || network.Ends.Count == 0)
        {
            return (null, "");
        }

        double entry = network.Entry is { } hole ? PipeNetwork.HeightOf(hole) : 0;
        var worst = network.Ends.MinBy(e => -Friction(e.Way) - Static(e.Height, entry));
        double left = mains.Pressure.Base - Friction(worst.Way) - Static(worst.Height, entry);
        var figure = w.Of(
            "pressure left at the worst outlet", worst.Id, left, Measure.Pressure,
                "main - height x weight of water - friction of its pipes",
            $"{w.Text(mains.Pressure.Base, Measure.Pressure)} - {w.Text(Static(worst.Height, entry), Measure.Pressure)} - "
                + w.Text(Friction(worst.Way), Measure.Pressure), Own,
            [
                FigureInput.Said("mains", w.Text(mains.Pressure.Base, Measure.Pressure), mains.Span),
                .. worst.Way.Select(p => p.Loss).OfType<Figure>().Select(FigureInput.Of)]);
        return (figure, worst.Id);

        static double Friction(IReadOnlyList<SizedPipe> way) => way.Sum(p => p.Loss?.Value ?? 0);

        static double Static(double height, double from) => (height - from) / 1000 * HazenWilliams.WaterWeight;
    }
}
