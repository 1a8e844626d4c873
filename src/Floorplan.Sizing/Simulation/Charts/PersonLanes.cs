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
            List<PersonSpan> own = [.. spans[p.Index].OrderBy(s => s.From)];
            own.ForEach(s => sums.Add(State(s.Does), s.From, s.Until));
            foreach (var pause in outcome.Line.Breaks)
            {
                Rest(sums, pause, own);
            }

            int number = outcome.People.Take(p.Index + 1).Count(o => o.Crew == p.Item.Crew);
            string crew = outcome.Line.Crews[p.Item.Crew].Name;
            return new DayLane(crew, FormattableString.Invariant($"{crew} {number}"), sums.Shares(DayState.Wait));
        })];
    }

    /// <summary>What was begun is finished first; as much of the break as that took is rested afterwards.</summary>
    private static void Rest(SlotSums sums, LineBreak pause, List<PersonSpan> spans)
    {
        long free = pause.From;
        for (int i = spans.FindIndex(s => s.Until > pause.From); i >= 0 && i < spans.Count && spans[i].From <= free; i++)
        {
            free = spans[i].Until;
        }

        sums.Add(DayState.Rest, free, pause.To);
        sums.Add(DayState.Rest, Math.Max(free, pause.To), Math.Max(free, pause.To) + Math.Min(free, pause.To) - pause.From);
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
