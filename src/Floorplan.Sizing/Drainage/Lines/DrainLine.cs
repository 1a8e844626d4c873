using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>The pipe from one drain to the next, or out of the unit.</summary>
/// <param name="Next">The drain that it runs to; null where it leaves.</param>
/// <param name="Units">Drainage fixture units, those of drains before it among them; null by EN 12056.</param>
/// <param name="Flow">m3/s at once.</param>
/// <param name="Pipe">Null where no size is large enough.</param>
/// <param name="Size">In mm, as it is bought; null without a size.</param>
/// <param name="Needed">The smallest that takes it, however wide the drain is; null where no size is large enough.</param>
/// <param name="Run">In mm, square on plan.</param>
/// <param name="Fall">In mm.</param>
/// <param name="InvertAtEnd">In mm below the finished floor, where the line ends.</param>
/// <param name="Capacity">m3/s of the full pipe; null without a size.</param>
public sealed record DrainLine(
    Drain Drain, Drain? Next, Figure? Units, Figure Flow, DrainPipe? Pipe, DrainPipe? Needed, Figure? Size, Figure Run, Figure Fall,
        Figure InvertAtEnd,
    Figure? Capacity)
{
    /// <summary>1/4 in a foot.</summary>
    public const double UsSlope = 0.25 / 12;

    public const double MetricSlope = 0.02;

    /// <summary>Of an outlet whose depth the plan does not say, mm below the finished floor.</summary>
    public const double UsualOutlet = 150;

    public static Source UsSlopeSource { get; } = new(
        "IPC 2021 704.1: at least 1/4 in a foot up to 2 1/2 in, and before a grease interceptor", Origin.FoundInSecondaryCopy,
        Force.ModelCode);

    public static Source MetricSlopeSource { get; } = new("EN 12056-2: 1 % or more; 2 % is usual", Origin.FromMemory, Force.ModelCode);

    private static readonly Source Own = new("own assumption: outlets lie 150 mm below the finished floor", Origin.OwnAssumption);
    private static readonly Source Square = new("own assumption: lines run square, and leave by the nearest wall", Origin.OwnAssumption);

    public string Name => $"{Drain.Id} to {Next?.Id ?? "outside"}";

    public static double SlopeOf(CodeChoice code) => code == CodeChoice.Us ? UsSlope : MetricSlope;

    public static Source SlopeSourceOf(CodeChoice code) => code == CodeChoice.Us ? UsSlopeSource : MetricSlopeSource;

    /// <param name="into">All that comes to it: its own floor, sinks, stations, and drains before it.</param>
    internal static DrainLine Of(Plan plan, Drain drain, Drain? next, DrainInflow into, Workings w)
    {
        var code = plan.Head.Code;
        double slope = SlopeOf(code);
        string name = $"{drain.Id} to {next?.Id ?? "outside"}";
        string slopeText = QuantityText.Of(slope, Measure.Ratio, w.Units);
        var (units, flow) = into.Figures(name, code, w);
        double least = drain.Size?.Millimetres ?? 0;
        var needed = DrainPipe.Of(code).FirstOrDefault(p => p.Carries(code, units?.Value ?? 0, flow.Value, slope));
        var pipe = DrainPipe.Of(code).FirstOrDefault(
            p => p.Nominal >= Math.Floor(least) - 1 && p.Carries(code, units?.Value ?? 0, flow.Value, slope));
        var size = pipe is null
            ? null
            : w.Of(
                "size of the drain line", name, pipe.Nominal, QuantityKind.Length, pipe.Name,
                "the smallest that takes it, and no smaller than the drain",
                $"{units?.Text ?? flow.Text} at {slopeText}: {pipe.Name}", DrainPipe.SourceOf(code), FigureInput.Of(units ?? flow),
                FigureInput.Taken("slope", slopeText, SlopeSourceOf(code)));
        var run = RunOf(plan, drain, next, name, w);
        var fall = w.Of(
            "fall of the drain line", name, run.Value * slope, QuantityKind.Length,
            OnTape(run.Value * slope, w), "run x slope", $"{run.Text} x {slopeText}",
            SlopeSourceOf(code), FigureInput.Of(run), FigureInput.Taken("slope", slopeText, SlopeSourceOf(code)));
        double outlet = drain.OutletBelow?.Millimetres ?? UsualOutlet;
        string outletText = OnTape(outlet, w);
        var invert = w.Of(
            "depth of the drain line at its end", name, outlet + fall.Value, QuantityKind.Length,
            OnTape(outlet + fall.Value, w), "outlet below the floor + fall",
            $"{outletText} + {fall.Text}", SlopeSourceOf(code),
            drain.OutletBelow is null
                ? FigureInput.Taken("outlet below the floor", outletText, Own)
                : FigureInput.Said("outlet below the floor", outletText, drain.Span),
            FigureInput.Of(fall));
        var capacity = pipe is null
            ? null
            : w.Of(
                "flow of the full drain line", name, Manning.Full(pipe.Bore, slope), Measure.Flow,
                "1/n x area x (bore/4)^(2/3) x slope^(1/2)",
                FormattableString.Invariant(
                    $"1/0.013 x 0.785 x {pipe.Bore:0.####}² x ({pipe.Bore:0.####}/4)^(2/3) x {slope:0.####}^(1/2), in m³/s"),
                Manning.Source, FigureInput.Of(size!));
        return new DrainLine(drain, next, units, flow, pipe, needed, size, run, fall, invert, capacity);
    }

    private static string OnTape(double millimetres, Workings w) => Tape.For(w.Units).Sentence(Length.FromMillimetres(millimetres));

    private static Figure RunOf(Plan plan, Drain drain, Drain? next, string name, Workings w)
    {
        double mm;
        if (next is null)
        {
            var outside = plan.Shell.Outside.EnvelopeInternal;
            var at = drain.At.Coordinate;
            mm = Math.Max(0, new[] { at.X - outside.MinX, outside.MaxX - at.X, at.Y - outside.MinY, outside.MaxY - at.Y }.Min());
        }
        else
        {
            mm = Math.Abs((drain.At.X - next.At.X).Millimetres) + Math.Abs((drain.At.Y - next.At.Y).Millimetres);
        }

        return w.Of(
            "run of the drain line", name, mm, QuantityKind.Length, QuantityText.Distance(mm, w.Units),
            next is null ? "shortest way square to a wall, out of the shell" : "west to east + south to north",
            QuantityText.Distance(mm, w.Units), Square, FigureInput.Said(drain.Id, "its place", drain.Span));
    }
}

/// <summary>What comes to one drain.</summary>
/// <param name="Drains">Itself, and those before it on its line.</param>
public sealed record DrainInflow(
    IReadOnlyList<Drain> Drains, IReadOnlyList<Station> Sinks, IReadOnlyList<(Station Station, double Flow)> Running)
{
    /// <summary>How often fixtures run together: restaurants, hotels; EN 12056-2.</summary>
    private const double Frequency = 0.7;

    /// <summary>Units are null by EN 12056.</summary>
    internal (Figure? Units, Figure Flow) Figures(string name, CodeChoice code, Workings w)
    {
        double steady = Running.Sum(r => r.Flow);
        List<FigureInput> inputs =
        [
            .. Drains.Select(d => FigureInput.Said("drain " + d.Id, d.Size is { } s ? QuantityText.Length(s, w.Units) : "size not said",
                d.Span)),
            .. Sinks.Select(s => FigureInput.Said("sink " + s.Id, s.Purpose, s.Span)),
            .. Running.Select(r => FigureInput.Said("water through " + r.Station.Id, w.Text(r.Flow, Measure.Flow), r.Station.Span)),
        ];
        if (code == CodeChoice.Us)
        {
            double units = Drains.Sum(DrainUnits.OfFloorDrain) + Sinks.Sum(DrainUnits.OfSink) + DrainUnits.OfFlow(steady);
            var figure = w.Of(
                "drainage fixture units", name, units, QuantityKind.Count, QuantityText.Plain(units, 1) + " units",
                "floor drains + sinks + 2 for each gpm that runs on",
                $"{QuantityText.Plain(Drains.Sum(DrainUnits.OfFloorDrain))} + {QuantityText.Plain(Sinks.Sum(DrainUnits.OfSink))} + "
                    + QuantityText.Plain(DrainUnits.OfFlow(steady), 1), DrainUnits.Source, [.. inputs]);
            return (figure, w.Of(
                "waste water at once", name, units / DrainUnits.EachGpm * InchPound.CubicMetresPerGallon / 60, Measure.Flow,
                "units / 2, in gpm", $"{figure.Text} / 2", DrainUnits.Source, FigureInput.Of(figure)));
        }

        double sum = Drains.Sum(DrainUnits.LitresOfFloorDrain) + Sinks.Sum(DrainUnits.LitresOfSink);
        double flow = (Frequency * Math.Sqrt(sum) / 1000) + steady;
        return (null, w.Of(
            "waste water at once", name, flow, Measure.Flow, "0.7 x square root of the sum of discharges, in L/s + what runs on",
            FormattableString.Invariant($"0.7 x {sum:0.##}^(1/2) L/s + {w.Text(steady, Measure.Flow)}"), DrainUnits.EnSource, [.. inputs]));
    }
}
