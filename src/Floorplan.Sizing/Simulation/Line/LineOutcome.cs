namespace Floorplan.Sizing.Simulation.Line;

/// <summary>What a day on a line came to. All times in <see cref="Ticks"/>.</summary>
/// <param name="End">When the last thing happened.</param>
/// <param name="Events">How many things happened.</param>
/// <param name="Outs">When each item left the line, in order.</param>
/// <param name="OutProducts">Which product each of them is; empty where there is only one.</param>
/// <param name="InsideTime">Items inside, summed over time: also the times inside, summed over items (Little 1961).</param>
public sealed record LineOutcome(
    ProductLine Line, long End, long Events, IReadOnlyList<long> Outs, double InsideTime, IReadOnlyList<StepOutcome> Steps,
    IReadOnlyList<MoveOutcome> Moves, IReadOnlyList<PersonOutcome> People, IReadOnlyList<BinOutcome> Bins,
    IReadOnlyList<int> OutProducts)
{
    /// <summary>At which step each item left, in order; empty where only one is an end of the line.</summary>
    public IReadOnlyList<int> OutSteps { get; init; } = [];

    /// <summary>Why not all items came out; null where they did.</summary>
    public LineLock? Locked { get; init; }

    /// <summary>
    /// Items an hour, without the first and the last tenth of the items: there the line fills and runs dry. It is the slope of the line
    /// through what is out by when (least squares), because items that leave in batches would tilt one through two of them.
    /// </summary>
    public double SteadyRate
    {
        get
        {
            if (Locked is not null)
            {
                return 0;
            }

            int from = Outs.Count / 10;
            int count = Outs.Count - (2 * from);
            double middle = 0;
            for (int i = from; i < from + count; i++)
            {
                middle += Ticks.Hours(Outs[i]) / count;
            }

            double both = 0;
            double time = 0;
            for (int i = from; i < from + count; i++)
            {
                double off = Ticks.Hours(Outs[i]) - middle;
                both += off * (i - from - ((count - 1) / 2.0));
                time += off * off;
            }

            return time > 0 ? both / time : WholeRate;
        }
    }

    /// <summary>How long an item is on the line on average, from when it is taken in until it is out; ticks.</summary>
    public double TimeOnLine
        => (InsideTime - Steps[0].WaitingTime - Steps[0].GoingTime - Steps[0].BlockedTime) / Math.Max(1, Outs.Count);

    /// <summary>All items over the whole time.</summary>
    public double WholeRate => End > 0 ? Outs.Count / Ticks.Hours(End) : 0;
}

/// <param name="Items">That were started here.</param>
/// <param name="WaitingTime">Items waiting, summed over time.</param>
/// <param name="GoingTime">Jobs worked on or staying, summed over time.</param>
/// <param name="HandsTime">People at work here, with their way to it, summed over time.</param>
/// <param name="BlockedTime">Jobs that were done and could not leave, summed over time.</param>
public sealed record StepOutcome(
    string Name, int Items, int MostWaiting, int MostHere, double WaitingTime, double GoingTime, double HandsTime, double BlockedTime);

public sealed record MoveOutcome(int Trips, int Items);

/// <param name="Crew">Index of the crew.</param>
/// <param name="Carrying">With a load, and back with what carried it.</param>
/// <param name="Walking">With empty hands.</param>
/// <param name="Washing">Hands, on the way into a room.</param>
/// <param name="Waiting">The rest of the day.</param>
/// <param name="Until">When the last thing that they did was done.</param>
public sealed record PersonOutcome(
    int Crew, long Working, long Carrying, long Walking, long Emptying, long Washing, long Waiting, long Until, double Metres, int Trips);

/// <param name="Kilograms">All that came into it.</param>
/// <param name="Emptied">How often, during work.</param>
/// <param name="FullAt">When it first could take no more; null when it never was full.</param>
public sealed record BinOutcome(LineBin Bin, double Kilograms, int Emptied, long? FullAt);
