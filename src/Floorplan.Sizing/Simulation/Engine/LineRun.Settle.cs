namespace Floorplan.Sizing.Simulation.Engine;

/// <content>After each event: whatever can begin now begins.</content>
internal sealed partial class LineRun
{
    private void Settle()
    {
        bool more = true;
        while (more)
        {
            while (toLookCount > 0)
            {
                int s = toLook[--toLookCount];
                looked[s] = false;
                LookAt(s);
            }

            more = false;
            while (breaks == 0 && toGiveCount > 0)
            {
                var crew = crews[toGive[--toGiveCount]];
                crew.MayStart = false;
                more |= GiveWork(crew);
            }

            more |= toLookCount > 0;
        }
    }

    /// <summary>Begins what needs nobody at a step and on the ways from and to it, and tells the crews that may have work there.</summary>
    private void LookAt(int s)
    {
        var step = steps[s].Step;
        while ((step.Crew < 0 || step.Work.Mean == 0) && CanStart(s))
        {
            Start(s, -1, 0);
        }

        Tell(step.Crew);
        foreach (int m in movesFrom[s])
        {
            LookAtMove(m);
        }

        foreach (int m in movesTo[s])
        {
            LookAtMove(m);
        }
    }

    private void LookAtMove(int m)
    {
        var state = moves[m];
        if (state.HasCarrier)
        {
            Pile(state);
        }

        if (state.Move.Crew < 0)
        {
            while (CanGo(m))
            {
                Go(m, -1, 0);
            }
        }
        else
        {
            Tell(state.Move.Crew);
        }
    }

    /// <summary>What is done goes on the trolley that stands there.</summary>
    private void Pile(MoveState state)
    {
        var from = steps[state.Move.From];
        int items = state.Standing > 0 ? Math.Min(from.Done, state.Move.Load - state.Loaded) : 0;
        if (items > 0)
        {
            from.Take(items, now);
            state.Loaded += items;
            Look(state.Move.From);
        }
    }

    private void Tell(int crew)
    {
        if (crew >= 0 && !crews[crew].MayStart)
        {
            crews[crew].MayStart = true;
            toGive[toGiveCount++] = crew;
        }
    }

    private bool CanStart(int s)
    {
        var state = steps[s];
        var step = state.Step;
        return state.Waiting > 0 && state.HasPlace && (state.Waiting >= step.Least || IsLast(s)) && BinsTake(s);
    }

    private bool BinsTake(int s)
    {
        var state = steps[s];
        foreach (var (bin, kilograms) in state.Step.Waste)
        {
            if (!bins[bin].Takes(kilograms * Math.Min(state.Waiting, state.Step.Batch)))
            {
                bins[bin].Wait(now);
                Tell(bins[bin].Bin.Crew);
                return false;
            }
        }

        return true;
    }

    private bool CanGo(int m)
    {
        var state = moves[m];
        var move = state.Move;
        int room = steps[move.To].Room;
        if (!state.HasCarrier)
        {
            return steps[move.From].Done > 0 && room > 0;
        }

        return state.Loaded > 0 && state.Standing > 0 && room >= state.Loaded
            && (state.Loaded >= move.Load || IsEmpty(move.From) && IsLast(move.From));
    }

    private bool IsEmpty(int s) => steps[s].Waiting == 0 && steps[s].Going == 0 && steps[s].Done == 0;

    /// <summary>Whether no more items will come to a step.</summary>
    private bool IsLast(int s)
    {
        if (s == 0)
        {
            return supplied == line.Supply.Items;
        }

        foreach (int m in movesTo[s])
        {
            int from = moves[m].Move.From;
            if (moves[m].Under > 0 || moves[m].Loaded > 0 || !IsEmpty(from) || !IsLast(from))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Finds work for free people until there is none for any.</summary>
    private bool GiveWork(CrewJobs crew)
    {
        bool any = false;
        while (EmptyBin(crew) || AtHand(crew) || FarthestDown(crew))
        {
            any = true;
        }

        return any;
    }

    private bool EmptyBin(CrewJobs crew)
    {
        foreach (int b in crew.Bins)
        {
            var state = bins[b];
            if (state.IsWaitedFor && !state.IsBeingEmptied && Nearest(crew, state.Bin.Near) is >= 0 and var who)
            {
                var person = people[who];
                long walk = Walk(person, state.Bin.Near);
                person.IsBusy = true;
                person.Emptying += state.Bin.Trip;
                person.Metres += 2 * state.Bin.Metres;
                person.At = state.Bin.Near;
                state.IsBeingEmptied = true;
                events.Add(now + walk + state.Bin.Trip, EventKind.Emptied, b, who);
                return true;
            }
        }

        return false;
    }

    /// <summary>What somebody can do where they are: carry on first, then work.</summary>
    private bool AtHand(CrewJobs crew)
    {
        foreach (int p in crew.People)
        {
            var person = people[p];
            if (person.IsBusy)
            {
                continue;
            }

            foreach (int m in movesFrom[person.At])
            {
                if (crew == Of(moves[m].Move.Crew) && CanGo(m))
                {
                    Go(m, p, 0);
                    return true;
                }
            }

            if (crew == Of(steps[person.At].Step.Crew) && steps[person.At].Step.Work.Mean > 0 && CanStart(person.At))
            {
                Start(person.At, p, 0);
                return true;
            }
        }

        return false;
    }

    private CrewJobs? Of(int crew) => crew < 0 ? null : crews[crew];

    private bool FarthestDown(CrewJobs crew)
    {
        foreach (var job in crew.Jobs)
        {
            if ((job.Move >= 0 ? CanGo(job.Move) : CanStart(job.Step)) && Nearest(crew, job.Step) is >= 0 and var who)
            {
                long walk = Walk(people[who], job.Step);
                if (job.Move >= 0)
                {
                    Go(job.Move, who, walk);
                }
                else
                {
                    Start(job.Step, who, walk);
                }

                return true;
            }
        }

        return false;
    }

    private int Nearest(CrewJobs crew, int step)
    {
        int best = -1;
        foreach (int p in crew.People)
        {
            if (!people[p].IsBusy && (best < 0 || line.Walk(people[p].At, step) < line.Walk(people[best].At, step)))
            {
                best = p;
            }
        }

        return best;
    }

    /// <summary>With empty hands; counted for the person.</summary>
    private long Walk(PersonState person, int to)
    {
        long walk = line.Walk(person.At, to);
        person.Walking += walk;
        person.Metres += line.WalkMetres(walk);
        person.At = to;
        return walk;
    }

    /// <param name="walk">Until the person is there.</param>
    private void Start(int s, int who, long walk)
    {
        var state = steps[s];
        var step = state.Step;
        int items = Math.Min(state.Waiting, step.Batch);
        state.Start(items, now, who >= 0);
        foreach (var (bin, kilograms) in step.Waste)
        {
            bins[bin].Add(kilograms * items, now);
        }

        long work = 0;
        for (int i = 0; step.Work.Mean > 0 && i < items; i++)
        {
            work += step.Work.Draw(random[s]);
        }

        if (who >= 0)
        {
            people[who].IsBusy = true;
            people[who].Working += work;
            events.Add(now + walk + work, EventKind.Worked, s, who, items);
        }
        else
        {
            long stay = work + step.Stay.Draw(random[s]);
            if (stay > 0)
            {
                events.Add(now + stay, EventKind.Stayed, s, -1, items);
            }
            else
            {
                Finish(s, items);
            }
        }

        Look(s);
    }

    private void Go(int m, int who, long walk)
    {
        var state = moves[m];
        var move = state.Move;
        int items = state.HasCarrier ? state.Loaded : 1;
        if (state.HasCarrier)
        {
            state.Loaded = 0;
            state.Standing--;
        }
        else
        {
            steps[move.From].Take(1, now);
        }

        state.Trips++;
        state.Items += items;
        state.Under += items;
        steps[move.To].Expect(items);
        if (who >= 0)
        {
            people[who].IsBusy = true;
            people[who].Carrying += move.There;
            people[who].Metres += move.Metres;
            people[who].Trips++;
        }

        if (walk + move.There == 0 && who < 0 && !state.HasCarrier)
        {
            // What takes no time and nobody has happened.
            state.Under -= items;
            steps[move.To].Come(items, now, wereExpected: true);
            Look(move.To);
        }
        else
        {
            events.Add(now + walk + move.There, EventKind.Delivered, m, who, items);
        }

        Look(move.From);
        Look(move.To);
    }
}
