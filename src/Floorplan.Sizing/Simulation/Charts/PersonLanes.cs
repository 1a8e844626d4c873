using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>The lanes of the people, crew by crew.</summary>
internal static class PersonLanes
{
    public static IReadOnlyList<DayLane> Of(LineOutcome outcome, LineRecord record, long slot, long end)
    {
        var spans = record.People.ToLookup(s => s.Person);
        return [.. outcome.People.Index().Select(p =>
        {
            var sums = new SlotSums(slot, end);
            long free = 0;
            foreach (var span in spans[p.Index].OrderBy(s => s.From))
            {
                Rest(sums, outcome.Line.Breaks, free, span.From);
                sums.Add(State(span.Does), span.From, span.Until);
                free = span.Until;
            }

            Rest(sums, outcome.Line.Breaks, free, end);
            int number = outcome.People.Take(p.Index + 1).Count(o => o.Crew == p.Item.Crew);
            string crew = outcome.Line.Crews[p.Item.Crew].Name;
            return new DayLane(crew, FormattableString.Invariant($"{crew} {number}"), sums.Shares(DayState.Wait));
        })];
    }

    /// <summary>Free time within a break is rest; what was begun before it is finished first.</summary>
    private static void Rest(SlotSums sums, IReadOnlyList<LineBreak> breaks, long from, long until)
    {
        foreach (var pause in breaks)
        {
            sums.Add(DayState.Rest, Math.Max(from, pause.From), Math.Min(until, pause.To));
        }
    }

    private static DayState State(PersonDoes does) => does switch
    {
        PersonDoes.Carry or PersonDoes.BringBack => DayState.Carry,
        PersonDoes.Walk => DayState.Walk,
        PersonDoes.Empty => DayState.Empty,
        PersonDoes.Wash => DayState.Wash,
        _ => DayState.Work,
    };
}
