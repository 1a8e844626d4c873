using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Water.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>Drains and waste, for the subject and what goes on from it.</summary>
public sealed record DrainsSized(SizedSubject Subject)
{
    /// <summary>A tank is let out in so long, s; own choice.</summary>
    private const double DumpTime = 300;

    /// <summary>Of the tank of a trailer beyond its fresh water.</summary>
    private const double HoldingShare = 1.15;

    private static readonly Source DumpSource = new("own assumption: a tank is let out in 5 minutes", Origin.OwnAssumption);

    private static readonly Source HoldingSource = new(
        "rules for mobile food units in many US states: the waste tank is 15 % larger than the fresh water", Origin.CommonPractice);

    private static readonly Source WasteSource = new("the day of the plan, run with the waste that stations say", Origin.OwnAssumption);

    /// <summary>Null where the plan has no drain.</summary>
    public static DrainsSized? Of(PlanFacts facts)
    {
        var lines = facts.DrainLines.Lines;
        if (lines.Count == 0)
        {
            return null;
        }

        var w = new Workings(facts.Plan.Units);
        var dump = DumpOf(facts, w);
        var holding = Holding(facts, w);
        var subject = new SizedSubject("Drains", [.. Rows(facts, lines, dump, holding, w)])
        {
            Figures = [.. facts.DrainLines.Figures, .. w.Figures],
            Tables = [.. Tables(facts, lines)],
            Missing =
            [
                .. lines.Select(l => l.Drain).Where(d => d.OutletBelow is null).Select(d => new NotSaid(
                    $"how deep the outlet of {d.Id} lies",
                    $"`outlet {(facts.Plan.Units == UnitSystem.Metric ? "150" : "6 in")} below floor` at drain {d.Id}", d.Span)),
            ],
            Cautions =
            [
                "Drains: each has a trap with a seal of 50 to 100 mm (2 to 4 in) and a vent; food waste goes through an air gap; a "
                    + "licensed plumber lays them by the local code, and the sewer's owner says what it takes.",
            ],
        };
        return new DrainsSized(subject);
    }

    private static (Station Tank, Figure Flow)? DumpOf(PlanFacts facts, Workings w)
    {
        var tank = facts.Uses.Of(NeedKind.Drain).Select(u => u.Station).OfType<Station>()
            .Where(s => WaterDay.Volume(s) > 0).OrderByDescending(s => WaterDay.Volume(s)).FirstOrDefault();
        return tank is null ? null : (tank, w.Of(
            "flow when the tank is let out", tank.Id, WaterDay.Volume(tank)!.Value / DumpTime, Measure.Flow, "what it holds / 5 min",
            $"{w.Text(WaterDay.Volume(tank)!.Value, Measure.Liquid)} / 5 min", DumpSource,
            FigureInput.Said("what it holds", w.Text(WaterDay.Volume(tank)!.Value, Measure.Liquid), tank.Span)));
    }

    private static Figure? Holding(PlanFacts facts, Workings w)
        => facts.Plan.Shell.Kind != ShellKind.Trailer || facts.WaterSized?.Day is not { } day ? null : w.Of(
            "waste water tank of a day", Figure.WholePlan, day.Total.Value * HoldingShare, Measure.Liquid, "water a day x 1.15",
            $"{day.Total.Text} x 1.15", HoldingSource, FigureInput.Of(day.Total));

    private static IEnumerable<SizeRow> Rows(
        PlanFacts facts, IReadOnlyList<DrainLine> lines, (Station Tank, Figure Flow)? dump, Figure? holding, Workings w)
    {
        var largest = lines.MaxBy(l => l.Flow.Value)!;
        yield return new SizeRow(
            "largest line", largest.Size?.Text ?? "no single size is large enough",
            $"{largest.Name}, {largest.Units?.Text ?? largest.Flow.Text}, {QuantityText.Of(
                DrainLine.SlopeOf(facts.Plan.Head.Code), Measure.Ratio, w.Units)}", largest.Size ?? largest.Flow);
        var deepest = lines.MaxBy(l => l.InvertAtEnd.Value)!;
        string ground = facts.Plan.Shell.GroundBelowFloor is { } below && deepest.InvertAtEnd.Value > below.Millimetres
            ? ", below the ground there"
            : "";
        yield return SizeRow.Of("deepest end", deepest.InvertAtEnd, $"below the floor, {deepest.Name}{ground}");
        if (dump is { } let)
        {
            yield return SizeRow.Of($"{let.Tank.Id} let out", let.Flow, Takes(facts, lines, let.Tank, let.Flow));
        }

        if (facts.WaterSized?.Day is { } day)
        {
            yield return SizeRow.Of("waste water a day", w.Add(day.Total), "all water that comes in");
        }

        if (facts.Day.Paced is { Bins.Count: > 0 } paced)
        {
            double kilograms = paced.Bins.Sum(b => b.Kilograms);
            yield return SizeRow.Of(
                "waste in bins a day",
                w.Of(
                    "waste a day", Figure.WholePlan, kilograms, Measure.Mass, "sum over the bins, at the pace of the target",
                    WorkingText.Sum([.. paced.Bins.Select(b => w.Text(b.Kilograms, Measure.Mass))]), WasteSource));
        }

        if (holding is not null)
        {
            yield return SizeRow.Of("waste tank", holding, "of a trailer, for one day");
        }

        if (Interceptor(facts, w) is { } grease)
        {
            yield return grease;
        }
    }

    private static string Takes(PlanFacts facts, IReadOnlyList<DrainLine> lines, Station tank, Figure flow)
    {
        var line = lines.FirstOrDefault(l => l.Drain.Id == facts.Supply.Of(tank.Id, NeedKind.Drain)?.Point?.Id);
        return line?.Capacity is not { } full ? ""
            : flow.Value <= full.Value ? $"{line.Drain.Id} takes {full.Text} full"
            : $"more than {line.Drain.Id} takes full, {full.Text}: let it out slowly";
    }

    private static SizeRow? Interceptor(PlanFacts facts, Workings w)
    {
        // Bowls of sinks that are not for hands; 300 mm deep where the plan does not say what they hold.
        var bowl = facts.Plan.Stations.Where(s => s.Role == StationRole.Sink && !s.IsHandSink && !s.IsSterilizer)
            .Select(s => (Sink: s,
                Volume: s.Volume?.Base ?? (s.Footprint.Area / 1e6 * 0.3))).OrderByDescending(s => s.Volume).FirstOrDefault();
        if (bowl.Sink is null || bowl.Volume <= 0)
        {
            return null;
        }

        double gpm = GreaseInterceptor.Gpm(bowl.Volume, 2);
        double flow = gpm * InchPound.CubicMetresPerGallon / 60;
        var figure = w.Of(
            "flow to a grease interceptor", bowl.Sink.Id, flow, Measure.Flow, "volume of the largest bowl x 75 % / 2 min",
            $"{w.Text(bowl.Volume, Measure.Liquid)} x 0.75 / 2 min", GreaseInterceptor.Source,
            FigureInput.Said("bowl of " + bowl.Sink.Id, w.Text(bowl.Volume, Measure.Liquid), bowl.Sink.Span));
        return SizeRow.Of(
            "grease interceptor", figure,
            GreaseInterceptor.Next(gpm) is { } next
                ? $"take the size of {w.Text(next * InchPound.CubicMetresPerGallon / 60, Measure.Flow)}, "
                    + w.Text(GreaseInterceptor.Pounds(next) * InchPound.KilogramsPerPound, Measure.Mass)
                    + " of grease; screen feathers and scraps before it"
                : "more than the largest listed size");
    }

    private static IEnumerable<SizeTable> Tables(PlanFacts facts, IReadOnlyList<DrainLine> lines)
    {
        yield return new SizeTable(
            "Drain lines",
            ["Line", "Units", "At once", "Size", "Run", "Fall", "Depth at end", "Full pipe takes"],
            [
                .. lines.Select(l => new[]
                {
                    l.Name, l.Units?.Text ?? "", l.Flow.Text, l.Size?.Text ?? "none is large enough", l.Run.Text, l.Fall.Text,
                    l.InvertAtEnd.Text, l.Capacity?.Text ?? "",
                })],
            [.. lines.SelectMany(l => new[] { l.Units, l.Flow, l.Size, l.Run, l.Fall, l.InvertAtEnd, l.Capacity }).OfType<Figure>()]);
        if (facts.Day.Paced is { Bins.Count: > 0 } paced)
        {
            yield return new SizeTable(
                "Waste of a day, by bin", ["Bin", "Comes in", "Holds", "Emptied in work"],
                [
                    .. paced.Bins.Select(b => new[]
                    {
                        b.Bin.Name, QuantityText.Of(b.Kilograms, Measure.Mass, facts.Plan.Units),
                        QuantityText.Of(b.Bin.Kilograms, Measure.Mass, facts.Plan.Units),
                            b.Emptied == 0 ? "no" : QuantityText.Count(b.Emptied, "time"),
                    })], []);
        }
    }
}
