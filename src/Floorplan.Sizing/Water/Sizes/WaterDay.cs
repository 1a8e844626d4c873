using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Simulation.Running;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Sizes;

/// <summary>Water of one day, cold and hot together.</summary>
/// <param name="Total">m3.</param>
/// <param name="EachItem">m3.</param>
/// <param name="WashDown">m3, of the total.</param>
/// <param name="HandWash">m3, of the total.</param>
/// <param name="Fills">m3 that fill tanks once, of the total; by station.</param>
/// <param name="Working">m3 that stations draw while they are in use, of the total; by station.</param>
public sealed record WaterDay(
    Figure Total, Figure EachItem, Figure? WashDown, Figure? HandWash, IReadOnlyDictionary<string, Figure> Fills,
    IReadOnlyDictionary<string, Figure> Working)
{
    /// <summary>A tap runs for half of a hand wash, and a hose for half of wash-down.</summary>
    public const double OpenShare = 0.5;

    private static readonly Source Own = new("own assumption: taps and hoses are open half of the time", Origin.OwnAssumption);
    private static readonly Source InUse = new("own assumption: water runs while a station is in use in the day of the plan",
        Origin.OwnAssumption);
    private static readonly Source FillSource = new("own assumption: a tank is filled once a day", Origin.OwnAssumption);
    private static readonly Source Sum = new("sum", Origin.OwnAssumption);

    /// <summary>Null where the day cannot be run.</summary>
    internal static WaterDay? Of(PlanFacts facts, IReadOnlyList<WaterDraw> draws, Workings w)
    {
        if (facts.Running is not { } running || DayFrame.Of(facts.Plan, facts.Day) is not { } frame)
        {
            return null;
        }

        var working = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var draw in draws.Where(d => d.Station is not null && d.RunsOn > 0))
        {
            working[draw.Id] = OfStation(draw, running, frame, w);
        }

        var fills = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var draw in draws)
        {
            if (draw.Station is { } tank && Volume(tank) is { } volume)
            {
                fills[tank.Id] = w.Of(
                    "water to fill it", tank.Id, volume, Measure.Liquid, "full weight less empty weight, or the volume that it says",
                    w.Text(volume, Measure.Liquid), FillSource, FigureInput.Said("what it holds", w.Text(volume, Measure.Liquid),
                        tank.Span));
            }
        }

        var hands = draws.Any(d => d.Station?.IsHandSink == true) && running.Seconds(RunningTimes.HandWash) is > 0 and var seconds
            ? w.Of(
                "water to wash hands", Figure.WholePlan, seconds * WaterDraw.HandTapFlow * OpenShare, Measure.Liquid,
                "time at the basins x flow of a tap x share of the time that it is open",
                $"{QuantityText.Time(seconds)} x {w.Text(WaterDraw.HandTapFlow, Measure.Flow)} x 50 %", Own,
                FigureInput.Taken("a tap for hands", w.Text(WaterDraw.HandTapFlow, Measure.Flow), WaterDraw.HandTapSource))
            : null;
        var clean = OfWashDown(facts, draws, frame, w);
        List<Figure> parts = [.. working.Values, .. fills.Values, .. new[] { hands, clean }.OfType<Figure>()];
        double all = parts.Sum(p => p.Value);
        var total = w.Of(
            "water a day", Figure.WholePlan, all, Measure.Liquid, "stations + filling of tanks + hands + wash-down",
            parts.Count > 0 ? WorkingText.Sum([.. parts.Select(p => p.Text)]) : "none", Sum, [.. parts.Select(FigureInput.Of)]);
        int items = Math.Max(1, facts.Day.Planned.Items);
        var each = w.Of(
            "water an item", Figure.WholePlan, all / items, Measure.Liquid, "water a day / items a day",
            $"{total.Text} / {items} {facts.Day.Planned.Things}", Sum, FigureInput.Of(total));
        return new WaterDay(total, each, clean, hands, fills, working);
    }

    /// <summary>Of water that a thing is filled with, in m3; null where the plan does not say it. Bins hold no water.</summary>
    public static double? Volume(Station station)
        => station.Role == StationRole.Bin ? null
            : station.Volume is { Base: > 0 } volume ? volume.Base
            : station is { WeightFull: { } full, WeightEmpty: { } empty } && full.Base > empty.Base
                ? (full.Base - empty.Base) / Weights.ItemWeight.WaterDensity
                : null;

    private static Figure OfStation(WaterDraw draw, RunningTimes running, DayFrame frame, Workings w)
    {
        // What is not on the line is used all through work.
        double seconds = running.Seconds(draw.Id) ?? Ticks.Seconds(frame.HandsEnd);
        return w.Of(
            "water that runs through it", draw.Id, draw.RunsOn * seconds, Measure.Liquid, "flow x time in use",
            $"{w.Text(draw.RunsOn, Measure.Flow)} x {QuantityText.Time(seconds)}", InUse, [.. draw.Inputs]);
    }

    private static Figure? OfWashDown(PlanFacts facts, IReadOnlyList<WaterDraw> draws, DayFrame frame, Workings w)
    {
        int hoses = WaterDraw.HosesAtOnce(facts, draws);
        double seconds = Ticks.Seconds(frame.WashDown);
        return hoses == 0 || seconds <= 0 ? null : w.Of(
            "water to wash down", Figure.WholePlan, hoses * seconds * WaterDraw.HoseFlow * OpenShare, Measure.Liquid,
            "hoses, one a person x time x flow of a hose x share of the time that it is open",
            $"{hoses} x {QuantityText.Time(seconds)} x {w.Text(WaterDraw.HoseFlow, Measure.Flow)} x 50 %", Own,
            frame.IsWashDownSaid
                ? FigureInput.Said("wash-down", QuantityText.Time(seconds), facts.Plan.Day!.Span)
                : FigureInput.Taken("wash-down", QuantityText.Time(seconds), DayAssumptions.WashDownSource),
            FigureInput.Taken("flow of a hose", w.Text(WaterDraw.HoseFlow, Measure.Flow), WaterDraw.HoseSource));
    }
}
