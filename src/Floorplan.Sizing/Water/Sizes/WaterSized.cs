using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Water.Pipes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Sizes;

/// <summary>Water: what is drawn at once and in a day, pipes, and the pressure that is left.</summary>
/// <param name="InDay">Drawn at once in the day; null where the day cannot be run.</param>
/// <param name="Day">Null where the day cannot be run.</param>
public sealed record WaterSized(SizedSubject Subject, WaterPiping Piping, Figure? InDay, WaterDay? Day)
{
    /// <summary>Null where nothing takes water.</summary>
    public static WaterSized? Of(PlanFacts facts)
    {
        if (facts.WaterPiping is not { } piping)
        {
            return null;
        }

        var w = new Workings(facts.Plan.Units);
        var (inDay, when) = WaterPeak.InDay(facts, piping.Draws, w);
        var day = WaterDay.Of(facts, piping.Draws, w);
        var subject = new SizedSubject("Water", [.. Rows(piping, inDay, when, day, w)])
        {
            Figures = [.. piping.Figures, .. w.Figures],
            Tables = [PipeTable.Of(piping.Network)],
            Missing = [.. Missing(facts, piping.Draws, piping.Network)],
            Cautions = ["Water: a licensed plumber sizes and joins pipes by the local code; these figures are for planning."],
        };
        return new WaterSized(subject, piping, inDay, day);
    }

    private static IEnumerable<SizeRow> Rows(WaterPiping piping, Figure? inDay, string when, WaterDay? day, Workings w)
    {
        yield return SizeRow.Of("at once, by fixture units", piping.AtOnce, "cold and hot together");
        if (inDay is not null)
        {
            yield return SizeRow.Of("at once, in the day", inDay, when);
        }

        if (day is not null)
        {
            yield return SizeRow.Of("in a day", day.Total, $"{day.EachItem.Text} an item; wash-down {day.WashDown?.Text ?? "none"}");
        }

        var main = piping.Network.Pipes[0];
        yield return new SizeRow(
            "service pipe", main.Tube?.Name ?? "several pipes", main.Velocity?.Text ?? "no single size is large enough", main.Bore);
        if (piping.Pressure is { } pressure)
        {
            yield return SizeRow.Of(
                "pressure left", pressure, $"at {piping.WorstAt}; needs {w.Text(WaterPiping.LeastPressure, Measure.Pressure)}");
        }
    }

    private static IEnumerable<NotSaid> Missing(PlanFacts facts, IReadOnlyList<WaterDraw> draws, PipeNetwork network)
    {
        var plan = facts.Plan;
        bool metric = plan.Units == UnitSystem.Metric;
        foreach (var draw in draws.Where(d => d is { Units: null, Flow: 0, Station: not null }))
        {
            string kind = facts.Uses.By(draw.Station!, NeedKind.ColdWater).Any() ? "cold" : "hot";
            yield return new NotSaid(
                $"flow of {kind} water to {draw.Id}", $"`needs {kind} {(metric ? "8 L/min" : "2 gpm")}` in station {draw.Id}",
                draw.Station!.Span);
        }

        if (network.Entry is null)
        {
            yield return new NotSaid(
                "where the water comes in",
                metric
                    ? "hole water-in \"Water\" in ROOM, north wall, 500 from west, height 150, 40"
                    : "hole water-in \"Water\" in ROOM, north wall, 20 in from west, height 6 in, 1 1/2 in", plan.Head.Span);
        }

        if (plan.Head.Mains is null)
        {
            yield return new NotSaid(
                "pressure of the water where it comes in",
                    metric ? "`mains 3 bar, 10 C` in the plan's head" : "`mains 45 psi, 50 F` in the plan's head",
                plan.Head.Span);
        }

        if (facts.Running is null)
        {
            foreach (var need in facts.Day.Planned.Needs.Take(1))
            {
                yield return new NotSaid("water a day: " + need.Missing, need.Write, need.Span);
            }
        }
    }
}
