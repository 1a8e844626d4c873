using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>One pipe from one end to the other.</summary>
/// <param name="From">Id of the end that water comes from.</param>
/// <param name="Tube">Null where no size is large enough.</param>
/// <param name="Length">In mm: square on plan and up or down.</param>
/// <param name="Loss">Pa, by friction; null without a size.</param>
public sealed record SizedPipe(
    string From, string To, bool IsHot, Figure Flow, Figure Length, TubeSize? Tube, Figure? Bore, Figure? Velocity, Figure? Loss)
{
    /// <summary>Three bends of 30, a tee of 60 and a valve of 8 diameters.</summary>
    private const double Fittings = (3 * 30) + 60 + 8;

    public static Source FittingSource { get; } = new(
        "own assumption: three bends, a tee and a valve in each pipe; 30, 60 and 8 diameters each (Crane-type ratios)",
            Origin.OwnAssumption);

    public static Source RouteSource { get; } =
        new("own assumption: pipes run square to the walls, and straight up or down", Origin.OwnAssumption);

    /// <summary>As a table shows it: <c>water-in to w1</c>.</summary>
    public string Name => $"{From} to {To}";

    /// <summary>What its figures are of.</summary>
    internal static string NameOf(string from, string to, bool isHot) => $"{from} to {to}{(isHot ? ", hot" : "")}";

    /// <param name="length">Of the pipe, in mm.</param>
    /// <param name="least">Index of the smallest size that may be taken.</param>
    internal static SizedPipe Of(string from, string to, bool isHot, Figure flow, Figure length, int least, Workings w)
    {
        double fastest = isHot ? TubeSize.FastestHot : TubeSize.FastestCold;
        string name = NameOf(from, to, isHot);
        if (TubeSize.Smallest(TubeSize.Of(w.Units), flow.Value, fastest, least) is not { } tube)
        {
            return new SizedPipe(from, to, isHot, flow, length, null, null, null, null);
        }

        string inside = Inside(tube, w);
        var bore = w.Of(
            "size of the pipe", name, tube.Bore * 1000, QuantityKind.Length, tube.Name,
            "the smallest in which water runs no faster than it may",
            $"{flow.Text} at no more than {w.Text(fastest, Measure.Speed)}: {tube.Name}, {inside} inside", TubeSize.SourceOf(w.Units),
            FigureInput.Of(flow), FigureInput.Taken("fastest", w.Text(fastest, Measure.Speed), TubeSize.VelocitySource));
        double speed = HazenWilliams.Velocity(flow.Value, tube.Bore);
        var velocity = w.Of(
            "speed of the water", name, speed, Measure.Speed, "flow / (pi / 4 x bore²)", $"{flow.Text} / (0.785 x {inside}²)",
            HazenWilliams.Source, FigureInput.Of(flow), FigureInput.Of(bore));
        double metres = (length.Value / 1000) + (Fittings * tube.Bore);
        var loss = w.Of(
            "pressure lost by friction", name, HazenWilliams.Loss(metres, flow.Value, tube.Bore), Measure.Pressure,
            "0.002083 x (length + 158 bores of fittings) x (100/140)^1.852 x gpm^1.852 / in^4.8655 x weight of water",
            $"over {WorkingText.Long(metres * 1000, w.Units)} with fittings, {flow.Text}, {inside}", HazenWilliams.Source,
            FigureInput.Of(flow), FigureInput.Of(length), FigureInput.Of(bore),
            FigureInput.Taken("fittings", "158 bores", FittingSource));
        return new SizedPipe(from, to, isHot, flow, length, tube, bore, velocity, loss);
    }

    private static string Inside(TubeSize tube, Workings w) => w.Units == UnitSystem.Metric
        ? QuantityText.Length(Language.Quantities.Length.FromMillimetres(tube.Bore * 1000), w.Units)
        : QuantityText.Plain(tube.Bore / 0.0254, 3) + " in";
}
