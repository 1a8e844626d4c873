using Floorplan.Sizing.Simulation.Engine.States;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <content>What begins: a job at a step, a trip from one step to the next.</content>
internal sealed partial class LineRun
{
    /// <param name="walk">Until the person is there.</param>
    private void Start(int s, int product, int who, long walk)
    {
        var state = steps[s];
        var step = state.Of(product);
        int items = Math.Min(state.At(product).Waiting, step.Batch);
        long change = state.IsChangedFor(product) ? step.ChangeOver : 0;
        state.Start(product, items, now, who >= 0);
        foreach (var (bin, kilograms) in step.Waste)
        {
            bins[bin].Add(kilograms * items, now);
            record?.Bins.Add(new BinLevel(now, bin, bins[bin].Kilograms));
        }

        long work = 0;
        for (int i = 0; step.Work.Mean > 0 && i < items; i++)
        {
            work += step.Work.Draw(random[s]);
        }

        work += change + Again(state.At(product), items);

        if (who >= 0)
        {
            people[who].IsBusy = true;
            people[who].Working += work;
            record?.People.Add(new PersonSpan(who, PersonDoes.Work, now + walk, now + walk + work, s, s));
            events.Add(now + walk + work, EventKind.Worked, s, who, items, product);
        }
        else
        {
            long stay = work + step.Stay.Draw(random[s]);
            if (stay > 0)
            {
                events.Add(now + stay, EventKind.Stayed, s, -1, items, product);
            }
            else
            {
                Finish(s, product, items);
            }
        }

        Look(s);
    }

    /// <summary>What is worked on a second time, and pauses, for the items that have just been started.</summary>
    private static long Again(ProductAtStep state, int items)
    {
        var step = state.Step;
        int before = state.Started - items;
        long again = step.PauseEvery > 0 ? step.Pause * ((state.Started / step.PauseEvery) - (before / step.PauseEvery)) : 0;
        if (step.Rework > 0)
        {
            again += step.Work.Mean * (long)(Math.Floor(state.Started * step.Rework) - Math.Floor(before * step.Rework));
        }

        return again;
    }

    private void Go(int m, int product, int who, long walk)
    {
        var state = moves[m];
        var move = state.Of(product);
        int items = state.HasCarrier ? state.Loaded : 1;
        if (state.HasCarrier)
        {
            state.Loaded = 0;
            state.Standing--;
        }
        else
        {
            steps[move.From].Take(product, 1, now, move.IsBack);
        }

        state.Trips++;
        state.Items += items;
        state.SetOut(product, items);
        steps[move.To].At(product).Expect(items, move.IsBack);
        if (who >= 0)
        {
            people[who].IsBusy = true;
            people[who].Carrying += move.There;
            people[who].Metres += move.Metres;
            people[who].Trips++;
            record?.People.Add(
                new PersonSpan(who, PersonDoes.Carry, now + walk, now + walk + move.There, move.From, move.To, m));
        }

        record?.Trips.Add(new LineTrip(m, who, items, now + walk, now + walk + move.There));

        if (walk + move.There == 0 && who < 0 && !state.HasCarrier)
        {
            // What takes no time and nobody has happened.
            state.SetOut(product, -items);
            steps[move.To].Come(product, items, now, wereExpected: true, move.IsBack);
            Look(move.To);
        }
        else
        {
            events.Add(now + walk + move.There, EventKind.Delivered, m, who, items, product);
        }

        Look(move.From);
        Look(move.To);
    }
}
