using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <content>Who does what next.</content>
internal sealed partial class LineRun
{
    /// <summary>Finds work for free people until there is none for any.</summary>
    private bool GiveWork(CrewJobs crew)
    {
        bool any = false;
        while (EmptyBin(crew) || AtHand(crew) || FarthestDown(crew, crew) || Help(crew))
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
                long walk = Walk(who, state.Bin.Near);
                person.IsBusy = true;
                person.Emptying += state.Bin.Trip;
                person.Metres += 2 * state.Bin.Metres;
                person.At = state.Bin.Near;
                state.IsBeingEmptied = true;
                record?.People.Add(
                    new PersonSpan(who, PersonDoes.Empty, now + walk, now + walk + state.Bin.Trip, state.Bin.Near, state.Bin.Near, b));
                long wash = Wash(who, now + walk + state.Bin.Trip);
                events.Add(now + walk + state.Bin.Trip + wash, EventKind.Emptied, b, who);
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

            if (times[person.At] is { } same ? AtStation(crew, p, same) : CarryOn(crew, p, person.At) || Work(crew, p, person.At))
            {
                return true;
            }
        }

        return false;
    }

    private bool AtStation(CrewJobs crew, int who, int[] same)
    {
        foreach (int s in same)
        {
            if (CarryOn(crew, who, s))
            {
                return true;
            }
        }

        foreach (int s in same)
        {
            if (Work(crew, who, s))
            {
                return true;
            }
        }

        return false;
    }

    private bool CarryOn(CrewJobs crew, int who, int s)
    {
        foreach (int m in movesFrom[s])
        {
            if (crew == Of(moves[m].Move.Crew) && ToGo(m) is >= 0 and var load)
            {
                Go(m, load, who, Walk(who, s));
                return true;
            }
        }

        return false;
    }

    private bool Work(CrewJobs crew, int who, int s)
    {
        if (crew == Of(steps[s].Crew) && Startable(s, byHand: true) is >= 0 and var product)
        {
            Start(s, product, who, Walk(who, s));
            return true;
        }

        return false;
    }

    private CrewJobs? Of(int crew) => crew < 0 ? null : crews[crew];

    /// <summary>Who has nothing to do in the crew's own work helps.</summary>
    private bool Help(CrewJobs crew)
    {
        foreach (int other in crew.Helps)
        {
            if (FarthestDown(crew, crews[other]))
            {
                return true;
            }
        }

        return false;
    }

    /// <param name="crew">Who does it.</param>
    /// <param name="of">Whose work it is.</param>
    private bool FarthestDown(CrewJobs crew, CrewJobs of)
    {
        foreach (var job in of.Jobs)
        {
            int product = job.Move >= 0 ? ToGo(job.Move) : Startable(job.Step, byHand: true);
            if (product >= 0 && Nearest(crew, job.Step) is >= 0 and var who)
            {
                long walk = Walk(who, job.Step);
                if (job.Move >= 0)
                {
                    Go(job.Move, product, who, walk);
                }
                else
                {
                    Start(job.Step, product, who, walk);
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

    /// <summary>With empty hands, hands washed where that is due; counted for the person.</summary>
    private long Walk(int who, int to)
    {
        var person = people[who];
        long walk = line.Walk(person.At, to);
        if (walk > 0)
        {
            record?.People.Add(new PersonSpan(who, PersonDoes.Walk, now, now + walk, person.At, to));
        }

        person.Walking += walk;
        person.Metres += line.WalkMetres(walk);
        bool washes = person.MustWash || line.IsIntoAnotherRoom(person.At, to);
        person.At = to;
        person.MustWash = false;
        return washes ? walk + Wash(who, now + walk) : walk;
    }

    private long Wash(int who, long from)
    {
        if (line.HandWash > 0)
        {
            people[who].Washing += line.HandWash;
            record?.People.Add(new PersonSpan(who, PersonDoes.Wash, from, from + line.HandWash, people[who].At, people[who].At));
        }

        return line.HandWash;
    }
}
