using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>The pace of the line with fewer and more people in one crew.</summary>
/// <param name="Now">People in it as the plan is.</param>
/// <param name="Rates">Items an hour by people, from few to many.</param>
public sealed record CrewPace(string Crew, int Now, IReadOnlyList<(int People, double Rate)> Rates)
{
    /// <summary>How many fewer and more are tried; own choice.</summary>
    private const int Fewer = 1;
    private const int More = 3;

    /// <summary>So much is run at most for all crews (<see cref="ProductLine.Weight"/>), since sheets are drawn at every edit.</summary>
    private const long MostWeight = 1_500_000;

    /// <summary>Empty where the day cannot be run, or the line is so long that its runs would take too much time.</summary>
    internal static IReadOnlyList<CrewPace> Of(PlanFacts facts)
    {
        if (facts.Day.Planned.Line is not { } paced)
        {
            return [];
        }

        // With the mean times where they differ from piece to piece, and then in proportion to the day's own pace.
        var line = PlannedDay.Fast(paced).WithoutSpread();
        var largest = line.Crews.Select((_, c) => c).Aggregate(line, (l, c) => l.WithPeople(c, n => n + More));
        if (largest.Weight * line.Crews.Count * (Fewer + More) > MostWeight)
        {
            return [];
        }

        var runs = line.Crews.SelectMany((crew, c) => Enumerable.Range(crew.People - Fewer, Fewer + More + 1).Where(n => n > 0)
            .Select(n => (Crew: c, People: n))).ToList();
        double now = facts.Day.Rate;
        double scale = paced.HasSpread ? now / Math.Max(double.Epsilon, LinePace.Of(line).PerHour) : 1;
        var rates = runs.AsParallel().AsOrdered().Select(r => r.People == line.Crews[r.Crew].People
            ? now
            : scale * LinePace.Of(line.WithPeople(r.Crew, _ => r.People)).PerHour).ToList();
        return
        [
            .. line.Crews.Select((crew, c) => new CrewPace(
                crew.Name, crew.People, [.. runs.Zip(rates).Where(r => r.First.Crew == c).Select(r => (r.First.People, r.Second))])),
        ];
    }
}
