using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine.States;

/// <summary>What is at one step now, and what has been there so far.</summary>
/// <param name="byProduct">The step as each product sees it: at least one.</param>
internal sealed class StepState(LineStep[] byProduct)
{
    /// <summary>Sums of shares of a place are not exact.</summary>
    private const double Slack = 1e-9;

    private readonly ProductAtStep[] products = [.. byProduct.Select(s => new ProductAtStep(s))];
    private StationState? station;
    private long since;

    /// <summary>As the first product sees it: its name, and what all products share.</summary>
    public LineStep Step => byProduct[0];

    public int Products => byProduct.Length;

    /// <summary>What the times that the product is at one station share; null where it is there once.</summary>
    public StationState? Station
    {
        get => station;
        set
        {
            station = value;
            HasOwnRoom = value is not null;
        }
    }

    /// <summary>Each product, and each time that it is there, has room of its own to wait: where something comes again.</summary>
    public bool HasOwnRoom { get; set; }

    /// <summary>Who works at it, for any product; -1 where it runs by itself.</summary>
    public int Crew { get; } = byProduct.Max(s => s.Crew);

    /// <summary>Items that wait for a place.</summary>
    public int Waiting { get; private set; }

    /// <summary>Places with a job in them: worked on, staying, or done.</summary>
    public int Taken { get; private set; }

    /// <summary>People at work here.</summary>
    public int Hands { get; private set; }

    /// <summary>Items that are done and not taken away yet.</summary>
    public int Done { get; private set; }

    /// <summary>Jobs that are not done yet.</summary>
    public int Going { get; private set; }

    /// <summary>Items that wait or are in places: worked on, staying, or done.</summary>
    public int Here { get; private set; }

    /// <summary>Items that have been started here.</summary>
    public int Started { get; private set; }

    /// <summary>The product of the last job; -1 before the first.</summary>
    public int Last { get; private set; } = -1;

    public int MostWaiting { get; private set; }

    public int MostHere { get; private set; }

    /// <summary>Sums over time, in item- or job-ticks.</summary>
    public double WaitingTime { get; private set; }

    public double GoingTime { get; private set; }

    public double HandsTime { get; private set; }

    /// <summary>Jobs that were done and could not leave.</summary>
    public double BlockedTime { get; private set; }

    public LineStep Of(int product) => byProduct[product];

    public ProductAtStep At(int product) => products[product];

    public bool NeedsHands(int product) => byProduct[product] is { Crew: >= 0, Work.Mean: > 0 };

    /// <summary>How many more items of a product may set out for here.</summary>
    public int Room(int product)
    {
        if (HasOwnRoom)
        {
            var own = products[product];
            double places = (double)own.Step.Places * own.Step.Batch;
            double free = station?.Free(own) ?? StationState.Free(this, own);
            return (int)Math.Clamp(Math.Floor((free * places) + Slack) + own.Step.Waits - own.Usual, int.MinValue, int.MaxValue);
        }

        if (products.Length == 1)
        {
            var only = products[0];
            return (int)Math.Min(int.MaxValue, only.Whole - ((long)only.Taken * Step.Batch) - only.Waiting - only.Coming);
        }

        double used = 0;
        foreach (var other in products)
        {
            used += (((double)other.Taken * other.Step.Batch) + other.Waiting + other.Coming) / other.Whole;
        }

        return (int)Math.Min(int.MaxValue, Math.Floor(((1 - used) * products[product].Whole) + Slack));
    }

    /// <summary>
    /// Whether a job of a product may begin: a place is free, and hands can be there. Another product than the last waits until the
    /// settings may be changed.
    /// </summary>
    public bool HasPlace(int product)
    {
        var step = byProduct[product];
        if (NeedsHands(product) && (station?.Hands ?? Hands) >= step.Hands || (station?.Taken ?? Taken) > 0 && IsChangedFor(product))
        {
            return false;
        }

        if (station is not null)
        {
            return station.Used + (1.0 / step.Places) <= 1 + Slack;
        }

        if (products.Length == 1)
        {
            return Taken < step.Places;
        }

        double used = 1.0 / step.Places;
        foreach (var other in products)
        {
            used += (double)other.Taken / other.Step.Places;
        }

        return used <= 1 + Slack;
    }

    /// <summary>Whether a job of this product asks for other settings than the last one did.</summary>
    public bool IsChangedFor(int product)
    {
        int last = station?.Last ?? Last;
        return last >= 0 && last != product && byProduct[product].ChangeOver > 0;
    }

    public void Come(int product, int items, long now, bool wereExpected, bool isBack = false)
    {
        Pass(now);
        products[product].Come(items, wereExpected, isBack);
        Waiting += items;
        Here += items;
        MostWaiting = Math.Max(MostWaiting, Waiting);
        MostHere = Math.Max(MostHere, Here);
    }

    /// <summary>A job gets its place.</summary>
    public void Start(int product, int items, long now, bool byHand)
    {
        Pass(now);
        products[product].Start(items);
        Waiting -= items;
        Taken++;
        Going++;
        Started += items;
        Hands += byHand ? 1 : 0;
        Last = product;
        if (station is not null)
        {
            station.Last = product;
        }
    }

    public void HandsOff(long now)
    {
        Pass(now);
        Hands--;
    }

    /// <returns>How many of them are to be sent back.</returns>
    public int Finish(int product, int items, long now)
    {
        Pass(now);
        Going--;
        Done += items;
        return products[product].Finish(items);
    }

    /// <summary>Takes items away that are done; a place is free when its whole job is gone.</summary>
    public void Take(int product, int items, long now, bool isBack = false)
    {
        Pass(now);
        Done -= items;
        Here -= items;
        Taken -= products[product].Take(items, isBack);
    }

    /// <summary>Adds up to now; before every change.</summary>
    public void Pass(long now)
    {
        double time = now - since;
        if (time > 0)
        {
            WaitingTime += time * Waiting;
            GoingTime += time * Going;
            HandsTime += time * Hands;
            BlockedTime += time * (Taken - Going);
            since = now;
        }
    }
}
