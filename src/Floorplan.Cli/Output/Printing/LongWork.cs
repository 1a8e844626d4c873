using System.Collections.Concurrent;
using Floorplan.Cli.Hosting;
using Spectre.Console;

namespace Floorplan.Cli.Output.Printing;

/// <summary>
/// Work that may take a while: on a terminal a bar shows how far it is, once it has taken a second, and is gone afterwards.
/// </summary>
internal static class LongWork
{
    /// <summary>Before this a bar would only flicker; own choice.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(100);

    /// <summary>Runs every maker, and returns what they made in their order.</summary>
    /// <param name="atOnce">How many run side by side.</param>
    public static IReadOnlyList<T> Make<T>(Host host, string what, IReadOnlyList<Func<T>> makers, int atOnce)
    {
        int done = 0;
        T Count(Func<T> maker)
        {
            var made = maker();
            Interlocked.Increment(ref done);
            return made;
        }

        // One after the other to the next free processor, since a picture takes as long as fifty texts.
        var next = Partitioner.Create(makers.ToArray(), loadBalance: true);
        IReadOnlyList<T> All() => [.. next.AsParallel().AsOrdered().WithDegreeOfParallelism(atOnce).Select(Count)];
        if (!host.ErrorColour)
        {
            return All();
        }

        var work = Task.Run(All);
        if (Task.WaitAny([work], Patience) < 0)
        {
            Show(host, what, makers.Count, work, () => Volatile.Read(ref done));
        }

        return work.GetAwaiter().GetResult();
    }

    private static void Show(Host host, string what, int count, Task work, Func<int> done)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes,
            ColorSystem = ColorSystemSupport.Standard,
            Interactive = InteractionSupport.Yes,
            Out = new AnsiConsoleOutput(host.Error),
        });
        console.Profile.Width = host.Width;
        console.Progress().AutoClear(true).Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn())
            .Start(progress =>
        {
            var task = progress.AddTask(what, maxValue: count);
            while (Task.WaitAny([work], Step) < 0)
            {
                task.Value = done();
            }

            task.Value = count;
        });
    }
}
