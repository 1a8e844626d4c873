using System.Globalization;
using Floorplan.Tests.Architecture;
using Xunit;
using Xunit.Abstractions;

namespace Floorplan.Tests.Robustness;

/// <summary>Whatever the text, the pipeline answers with findings: no exception, no hang, no memory blow-up.</summary>
[Collection(nameof(Alone))]
public class FuzzTests(ITestOutputHelper output)
{
    /// <summary>In CI; a slice of them otherwise.</summary>
    private const int Cases = 50_000;

    private const int Slice = 1_000;

    /// <summary>Work is bounded by counted steps; only a loop without an end takes this long even on a busy machine.</summary>
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(5);

    /// <summary>What may stay in memory after all cases beyond what was there before: caches, not one case each.</summary>
    private const long MostLeftBytes = 200L << 20;

    [Fact]
    public void Mutated_and_random_plans_give_findings_only()
    {
        int count =
            int.TryParse(
                Environment.GetEnvironmentVariable("FLOORPLAN_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out int wished)
            ? wished
            : Thoroughness.Whole ? Cases : Slice;
        long before = GC.GetTotalMemory(forceFullCollection: true);
        int given = -1;
        FuzzWorker[] workers =
            [.. Enumerable.Range(0, Environment.ProcessorCount)
                .Select(_ => new FuzzWorker(() => Interlocked.Increment(ref given) is var n && n < count ? n : -1))];
        foreach (var worker in workers)
        {
            worker.Start();
        }

        while (!Array.TrueForAll(workers, w => w.IsDone))
        {
            Thread.Sleep(100);
            Assert.All(
                workers, w
                    => Assert.True(
                        w.Running < Hang, $"case {w.Case} still runs after {Hang.TotalSeconds} s:\n{FuzzInput.Make(Math.Max(0, w.Case))}"));
        }

        Assert.All(workers, w => Assert.True(w.Failure is null, $"case {w.Case}: {w.Failure}\n{FuzzInput.Make(Math.Max(0, w.Case))}"));
        int bound = workers.Sum(w => w.Bound);
        var worst = workers.MaxBy(w => w.StepsOfWorst)!;
        output.WriteLine($"{count} cases, {bound} of them taken to sheets; most steps {worst.StepsOfWorst}, case {worst.Worst}");
        Assert.True(bound > count / 20, "too few cases bind for the later stages to be tried");
        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true) - before, long.MinValue, MostLeftBytes);
    }
}
