using System.Diagnostics;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Svg;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Tests.Robustness;

/// <summary>Takes fuzz cases through the whole pipeline, one at a time, on a thread of its own, and can be watched from outside.</summary>
internal sealed class FuzzWorker(Func<int> next)
{
    /// <summary>
    /// A gallery plan takes about 10 MB from text to sheets; a case of its size may not take 50 times that. Own assumption.
    /// </summary>
    private const long MostBytes = 512L << 20;

    /// <summary>
    /// Steps of searching that a case of a gallery plan's size may take from text to findings: about two seconds on the machine that the
    /// steps were measured on. Counted, so that a busy machine fails no case.
    /// </summary>
    private const long MostSteps = 60_000_000;

    private long startedAt;

    public int Case { get; private set; } = -1;

    public int Bound { get; private set; }

    /// <summary>Of the case that took most.</summary>
    public long StepsOfWorst { get; private set; }

    public int Worst { get; private set; } = -1;

    /// <summary>What went wrong, or null so far.</summary>
    public string? Failure { get; private set; }

    public bool IsDone { get; private set; }

    /// <summary>How long the present case has been running.</summary>
    public TimeSpan Running => IsDone || Case < 0 ? TimeSpan.Zero : Stopwatch.GetElapsedTime(Interlocked.Read(ref startedAt));

    public Thread Start()
    {
        var thread = new Thread(Run) { IsBackground = true, Name = "fuzz" };
        thread.Start();
        return thread;
    }

    private void Run()
    {
        for (int number = next(); number >= 0 && Failure is null; number = next())
        {
            Interlocked.Exchange(ref startedAt, Stopwatch.GetTimestamp());
            Case = number;
            long before = GC.GetAllocatedBytesForCurrentThread();
            long steps = Steps.Taken;
            try
            {
                Pass(FuzzInput.Make(number));
            }
            catch (Exception fault)
            {
                Failure = fault.ToString();
            }

            steps = Steps.Taken - steps;
            (StepsOfWorst, Worst) = steps > StepsOfWorst ? (steps, number) : (StepsOfWorst, Worst);
            if (steps > MostSteps)
            {
                Failure = $"it took {steps} steps";
            }

            long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            if (allocated > MostBytes)
            {
                Failure = $"it allocated {allocated >> 20} MB";
            }
        }

        IsDone = true;
    }

    private void Pass(string text)
    {
        var tree = SyntaxTree.Parse(new SourceText(text, "fuzz.unit"));
        if (tree.ToText() != text)
        {
            throw new InvalidOperationException("the tree does not give its text back");
        }

        var bound = PlanBinder.Bind(tree, new NoFiles());
        foreach (var diagnostic in bound.Diagnostics)
        {
            _ = diagnostic.Span.Position;
            _ = diagnostic.Span.Value;
        }

        if (bound.Plan is not { } plan || bound.Diagnostics.Any(d => d.Severity == Severity.Error))
        {
            return;
        }

        Bound++;
        var facts = new PlanFacts(plan, new FloorSpace(plan));
        var findings = Checker.Check(facts);
        foreach (var sheet in SheetSet.Draw(new SheetRequest(facts, findings)))
        {
            System.Xml.Linq.XDocument.Parse(SvgWriter.Write(sheet));
        }
    }
}
