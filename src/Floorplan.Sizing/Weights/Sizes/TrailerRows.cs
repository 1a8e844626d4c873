using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Trailers;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Sizes;

/// <summary>How hitch and axles of a trailer carry it, empty, full, at work, and on the road whichever tanks are full.</summary>
internal static class TrailerRows
{
    /// <summary>Heavier trailers are no longer drawn by a car in Europe (category O2 up to 3.5 t; from memory), kg.</summary>
    private const double CarTrailer = 3500;

    public static void Add(
        PlanFacts facts, Workings work, List<SizeRow> rows, List<SizeTable> tables, List<NotSaid> missing, List<string> cautions)
    {
        var plan = facts.Plan;
        missing.AddRange(Missing(plan));
        cautions.Add(
            "Towing can kill: weigh the finished trailer at the hitch and at the axles before it goes on the road, and keep to the plates "
            + "of trailer, hitch and vehicle.");
        if (facts.TrailerLoads is not [var full, var empty])
        {
            return;
        }

        List<TrailerLoad> loads = [empty, full];
        if (TrailerLoad.Of(facts, LoadState.AtWork(facts)) is { } atWork && facts.WorkingWeight.Together.Value > full.Total.Value)
        {
            loads.Add(atWork);
        }

        string rated = plan.Shell.Loads.HitchRatedKg is { } most ? $"; of {work.Text(most, Measure.Mass)} rated" : "";
        rows.Add(SizeRow.Of(
            "hitch, full", full.OnHitch, $"{full.HitchShare.Text}; empty {empty.OnHitch.Text}, {empty.HitchShare.Text}{rated}"));
        if (facts.TankStates is { } tanks)
        {
            rows.Add(new SizeRow(
                "hitch, tanks any way", $"{tanks.Least.HitchShare.Text} to {tanks.Most.HitchShare.Text}",
                $"least with {Full(tanks.FullAtLeast)}, most with {Full(tanks.FullAtMost)}", tanks.Most.HitchShare));
            loads.AddRange([tanks.Least, tanks.Most]);
        }

        var heaviest = loads.Where(l => l.Name != "at work").MaxBy(l => l.OnAxles.Value)!;
        string plates = plan.Shell is { Axles: > 0 and var axles, Loads.AxleRatedKg: { } each }
            ? $"of {work.Text(axles * each, Measure.Mass)} by their plates" : "their plates are not said";
        string road = RoadLimit.Of(plan, work) is { } limit ? $"; the road allows {limit.Text}" : "";
        rows.Add(SizeRow.Of("axles together", heaviest.OnAxles, $"{heaviest.Name}; {plates}{road}"));
        foreach (var figure in loads.SelectMany(Figures))
        {
            work.Add(figure);
        }

        tables.Add(new SizeTable(
            "Hitch and axles", ["State", "Together", "On the axles", "On the hitch", "Share on the hitch"],
            [.. loads.Select(l => (IReadOnlyList<string>)[l.Name, l.Total.Text, l.OnAxles.Text, l.OnHitch.Text, l.HitchShare.Text])],
            [.. loads.SelectMany(Figures)]));
        if (plan.Head.Code != CodeChoice.Us && full.Total.Value > CarTrailer)
        {
            cautions.Add(
                $"Over {work.Text(CarTrailer, Measure.Mass)} a trailer is no longer drawn by a car in Europe (category O2, from memory): "
                + "empty it before it travels, or ask for a lorry.");
        }
    }

    private static IEnumerable<Figure> Figures(TrailerLoad load)
        => [load.Total, load.ToWeight, load.OnAxles, load.OnHitch, load.HitchShare];

    private static string Full(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "all empty",
        <= 2 => string.Join(" and ", names) + " full",
        _ => FormattableString.Invariant($"{names.Count} things full"),
    };

    private static IEnumerable<NotSaid> Missing(Plan plan)
    {
        bool metric = plan.Units == UnitSystem.Metric;
        if (plan.Shell.Loads.AxlesFromHitch is null)
        {
            yield return new NotSaid(
                "place and plates of the axles",
                metric ? "axles 2, 4200 from hitch, 1350 kg each" : "axles 2, 14 ft from hitch, 3000 lb each", plan.Shell.Span);
        }
        else if (plan.Shell.Loads.AxleRatedKg is null)
        {
            yield return new NotSaid(
                "plates of the axles", metric ? "axles 2, 4200 from hitch, 1350 kg each" : "axles 2, 14 ft from hitch, 3000 lb each",
                plan.Shell.Span);
        }

        if (plan.Shell.Loads.EmptyKg is not null && plan.Shell.Loads.RatedKg is null)
        {
            yield return new NotSaid("what the trailer's plate allows in all", metric ? "3500 kg rated" : "7700 lb rated", plan.Shell.Span);
        }
    }
}
