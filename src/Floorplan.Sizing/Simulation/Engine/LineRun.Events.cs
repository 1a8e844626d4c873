using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <content>What each event does.</content>
internal sealed partial class LineRun
{
    private void Happen(in LineEvent one)
    {
        switch (one.Kind)
        {
            case EventKind.Arrived:
                Arrive(one.Product);
                break;
            case EventKind.Worked:
                steps[one.What].HandsOff(now);
                Free(one.Person);
                StayOrFinish(one.What, one.Product, one.Items);
                break;
            case EventKind.Stayed:
                Finish(one.What, one.Product, one.Items);
                break;
            case EventKind.Delivered:
                Deliver(one);
                break;
            case EventKind.Returned:
                moves[one.What].Standing++;
                Free(one.Person);
                Look(moves[one.What].Move.From);
                break;
            case EventKind.Emptied:
                bins[one.What].Empty();
                record?.Bins.Add(new BinLevel(now, one.What, 0));
                Free(one.Person);
                LookAll();
                break;
            case EventKind.BreakBegan:
                breaks++;
                restFrom = now;
                break;
            case EventKind.Rested:
                people[one.Person].IsBusy = false;
                Tell(people[one.Person].Crew);
                break;
            default:
                breaks--;
                AfterRest();
                LookAll();
                break;
        }
    }

    private void NextRest()
    {
        long until = now + line.RestEvery;
        events.Add(until - (long)(line.RestShare * line.RestEvery), EventKind.BreakBegan, 0);
        events.Add(until, EventKind.BreakEnded, 0);
    }

    /// <summary>Who was at work when the break began has a part of it still to come.</summary>
    private void AfterRest()
    {
        for (int p = 0; p < people.Length; p++)
        {
            var person = people[p];
            person.MustWash |= line.RestEvery == 0;
            if (person.IsBusy)
            {
                person.RestOwed += now - restFrom;
            }
            else
            {
                RestOn(p);
            }
        }

        if (line.RestEvery > 0 && (inside > 0 || outCount < line.Items))
        {
            NextRest();
        }
    }

    private void RestOn(int person)
    {
        if (people[person].RestOwed > 0)
        {
            people[person].IsBusy = true;
            events.Add(now + people[person].RestOwed, EventKind.Rested, 0, person);
            people[person].RestOwed = 0;
        }
    }

    private void Arrive(int product)
    {
        var supply = line.SupplyOf(product);
        int items = supply.Every.Mean == 0
            ? supply.Items - supplied[product]
            : Math.Min(supply.Load, supply.Items - supplied[product]);
        supplied[product] += items;
        Inside(items);
        came += now * items;
        steps[0].Come(product, items, now, wereExpected: false);
        Look(0);
        if (supplied[product] < supply.Items)
        {
            events.Add(now + supply.Every.Draw(arrivals), EventKind.Arrived, 0, product: product);
        }
    }

    private void StayOrFinish(int s, int product, int items)
    {
        var stay = steps[s].Of(product).Stay;
        if (stay.Mean > 0)
        {
            events.Add(now + stay.Draw(random[s]), EventKind.Stayed, s, -1, items, product);
            Look(s);
        }
        else
        {
            Finish(s, product, items);
        }
    }

    private void Finish(int s, int product, int items)
    {
        int back = steps[s].Finish(product, items, now);
        if (ends[s][product])
        {
            Leave(s, product, items - back);
        }

        Look(s);
    }

    /// <summary>The end of the line: a store keeps what comes to it.</summary>
    private void Leave(int s, int product, int items)
    {
        steps[s].Take(product, items, now);
        Inside(-items);
        left += now * items;
        for (int i = 0; i < items; i++)
        {
            if (outProducts.Length > 0)
            {
                outProducts[outCount] = product;
            }

            if (outSteps.Length > 0)
            {
                outSteps[outCount] = s;
            }

            outs[outCount++] = now;
        }
    }

    private void Inside(int more)
    {
        insideTime += (now - insideSince) * inside;
        insideSince = now;
        inside += more;
    }

    private void Deliver(in LineEvent one)
    {
        var state = moves[one.What];
        var move = state.Of(one.Product);
        state.SetOut(one.Product, -one.Items);
        steps[move.To].Come(one.Product, one.Items, now, wereExpected: true, move.IsBack);
        if (one.Person >= 0)
        {
            people[one.Person].At = move.To;
        }

        if (!state.HasCarrier)
        {
            Free(one.Person);
        }
        else if (one.Person >= 0)
        {
            people[one.Person].Carrying += move.Back;
            people[one.Person].Metres += move.Metres;
            people[one.Person].At = move.From;
            record?.People.Add(
                new PersonSpan(one.Person, PersonDoes.BringBack, now, now + move.Back, move.To, move.From, one.What));
            long wash = line.IsIntoAnotherRoom(move.To, move.From) ? Wash(one.Person, now + move.Back) : 0;
            events.Add(now + move.Back + wash, EventKind.Returned, one.What, one.Person);
        }
        else
        {
            events.Add(now + move.Back, EventKind.Returned, one.What);
        }

        Look(move.To);
        Look(move.From);
    }

    private void Free(int person)
    {
        if (person >= 0)
        {
            people[person].IsBusy = false;
            people[person].Until = now;
            if (breaks > 0)
            {
                people[person].RestOwed += now - restFrom;
            }
            else
            {
                RestOn(person);
            }

            Tell(people[person].Crew);
        }
    }
}
