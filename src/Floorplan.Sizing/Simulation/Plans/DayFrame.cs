using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>The whole day at the pace of the target, from the first person in to the last one out. All times in ticks.</summary>
/// <param name="StartUp">Before the first item; none where the plan does not say.</param>
/// <param name="FirstOut">From the start of work until the first item is out, and cold.</param>
/// <param name="LastOut">The same of the last item.</param>
/// <param name="HandsEnd">From the start of work until nobody has anything more to do.</param>
/// <param name="WashDown">After that.</param>
/// <param name="IsWashDownSaid">Or else estimated: <see cref="DayAssumptions.WashDownSource"/>.</param>
public sealed record DayFrame(long StartUp, long FirstOut, long LastOut, long HandsEnd, long WashDown, bool IsWashDownSaid)
{
    /// <summary>How long the crew is there.</summary>
    public long CrewTime => StartUp + HandsEnd + WashDown;

    /// <summary>Null where the day cannot be run.</summary>
    public static DayFrame? Of(Plan plan, PlannedDay day)
    {
        if (day.Paced is not { Outs: [var first, ..] } paced)
        {
            return null;
        }

        long last = paced.Outs[^1];
        long said = Ticks.Of(plan.Day?.WashDown) ?? 0;
        return new DayFrame(
            Ticks.Of(plan.Day?.StartUp) ?? 0, first, last, paced.People.Select(p => p.Until).DefaultIfEmpty(last).Max(),
            said > 0 ? said : Estimate(day.Planned, paced.People.Count), said > 0);
    }

    /// <summary>Floors of the rooms that product goes through, and each station on its way, shared by the crew.</summary>
    private static long Estimate(PlannedLine planned, int people)
    {
        List<Station> stations = [.. planned.Stations.OfType<Station>().Distinct()];
        double floor = stations.Select(s => s.Room).DistinctBy(r => r.Id).Sum(r => r.AreaSquareMetres);
        double seconds = (floor * DayAssumptions.WashFloor) + (stations.Count * DayAssumptions.WashStation);
        return Ticks.FromSeconds(seconds / Math.Max(1, people));
    }
}
