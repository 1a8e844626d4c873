namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>Adds up stretches of time, slot by slot.</summary>
internal sealed class SlotSums
{
    private readonly long slot;
    private readonly long end;
    private readonly long[][] sums;

    /// <param name="slot">How long a slot is; the last one may be shorter.</param>
    public SlotSums(long slot, long end)
    {
        this.slot = slot;
        this.end = end;
        sums = [.. Enumerable.Range(0, Count(slot, end)).Select(_ => new long[States])];
    }

    private static int States { get; } = Enum.GetValues<DayState>().Length;

    public static int Count(long slot, long end) => (int)Math.Clamp((end + slot - 1) / slot, 1, int.MaxValue);

    public void Add(DayState state, long from, long until)
    {
        until = Math.Min(until, end);
        for (long at = Math.Max(0, from); at < until;)
        {
            int index = (int)(at / slot);
            long to = Math.Min(until, (index + 1) * slot);
            sums[index][(int)state] += to - at;
            at = to;
        }
    }

    /// <summary>All that is not said of a slot is <paramref name="rest"/>.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Shares(DayState rest) => [.. sums.Index().Select(s =>
    {
        long length = Math.Max(1, Math.Min(end, (s.Index + 1) * slot) - (s.Index * slot));
        double[] shares = [.. s.Item.Select(x => x / (double)length)];
        shares[(int)rest] += (length - s.Item.Sum()) / (double)length;
        return shares;
    })];
}
