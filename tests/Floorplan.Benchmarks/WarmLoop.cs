using System.Diagnostics;

namespace Floorplan.Benchmarks;

/// <summary>
/// From text to the SVG of all sheets, again and again in a warm process, as the preview does at every edit: for comparing two builds, and
/// for a sampling profiler to watch.
/// </summary>
internal static class WarmLoop
{
    /// <param name="seconds">By the clock; half of it again goes into warming up before.</param>
    public static void Run(string text, double seconds)
    {
        _ = Rounds(text, seconds / 2);
        double processor = CpuClock.Now;
        long bytes = GC.GetTotalAllocatedBytes();
        var (small, large) = (GC.CollectionCount(0), GC.CollectionCount(GC.MaxGeneration));
        var clock = Rounds(text, seconds);
        int count = clock.Count;
        clock.Sort();
        Console.WriteLine(FormattableString.Invariant(
            $"{count} rounds by the clock: median {clock[count / 2]:0.0} ms, fastest {clock[0]:0.0} ms; of processor time ")
            + FormattableString.Invariant($"{(CpuClock.Now - processor) / count:0.0} ms; ")
            + FormattableString.Invariant($"{(GC.GetTotalAllocatedBytes() - bytes) / 1e6 / count:0.0} MB, collections ")
            + FormattableString.Invariant($"{(GC.CollectionCount(0) - small) / (double)count:0.0}, of them full ")
            + FormattableString.Invariant($"{(GC.CollectionCount(GC.MaxGeneration) - large) / (double)count:0.00}"));
    }

    private static List<double> Rounds(string text, double seconds)
    {
        var rounds = new List<double>();
        var all = Stopwatch.StartNew();
        do
        {
            var round = Stopwatch.StartNew();
            _ = Pipeline.All(text);
            rounds.Add(round.Elapsed.TotalMilliseconds);
        }
        while (all.Elapsed.TotalSeconds < seconds);
        return rounds;
    }
}
