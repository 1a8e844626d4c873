using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Gains;

/// <summary>One thing more for the line.</summary>
/// <param name="Of">Id of the room or station.</param>
/// <param name="Text">As the start of a sentence: <c>one more person in evis (4)</c>.</param>
/// <param name="Make">The line with it.</param>
public sealed record DayChange(string Of, string Text, Func<ProductLine, ProductLine> Make)
{
    /// <summary>How many people the crew has with it; null where it is no change of a crew.</summary>
    public int? People { get; private init; }

    /// <summary>A job of hands or of a machine, done in less time; own choice of how much.</summary>
    private const double Faster = 0.8;

    /// <summary>Every change of one size that may help.</summary>
    public static IEnumerable<DayChange> All(ProductLine line) =>
    [
        .. line.Crews.Select((_, c) => Person(line, c)),
        .. line.Steps.Index().SelectMany(s => OfStep(line, s.Index)),
        .. line.Moves.Index().Where(m => m.Item is { IsTaken: true, Load: > 1, Crew: >= 0 }).Select(m => Trolley(line, m.Index)),
    ];

    private static DayChange Person(ProductLine line, int c) => new(
        line.Crews[c].Name, FormattableString.Invariant($"one more person at {line.Crews[c].Name} ({line.Crews[c].People + 1} in all)"),
        l => l.WithPeople(c, n => n + 1))
    {
        People = line.Crews[c].People + 1,
    };

    private static IEnumerable<DayChange> OfStep(ProductLine line, int s)
    {
        var step = line.Steps[s];
        if (step.SameAs >= 0 || step.Places == LineStep.Unlimited || step is { Work.Mean: 0, Stay.Mean: 0 })
        {
            yield break;
        }

        DayChange Change(string text, Func<LineStep, LineStep> make) => new(
            step.Name, text, l => l.WithStep(s, make));
        if (step is { Work.Mean: > 0, Stay.Mean: 0, Batch: 1 })
        {
            yield return Change(
                FormattableString.Invariant($"one more place to stand at {step.Name} ({step.Hands + 1} in all)"),
                x => x with { Places = x.Places + 1, Hands = x.Hands + 1 });
        }
        else if (step.Batch > 1)
        {
            yield return Change(
                FormattableString.Invariant($"{step.Name} takes twice as many at a time ({2 * step.Batch})"),
                x => x with { Batch = 2 * x.Batch, Least = 2 * x.Least });
            yield return Change($"a second {step.Name}", x => x with { Places = x.Places + 1, Hands = x.Hands + 1 });
        }
        else
        {
            yield return Change(
                FormattableString.Invariant($"{step.Name} holds one more ({step.Places + 1})"), x => x with { Places = x.Places + 1 });
            yield return Change(
                FormattableString.Invariant($"{step.Name} holds twice as many ({2 * step.Places})"), x => x with { Places = 2 * x.Places });
        }

        if (step.Work.Mean > 0)
        {
            yield return Change($"a fifth less hand work at {step.Name}", x => x with { Work = x.Work.Times(Faster) });
        }

        if (step.Stay.Mean > 0 && step.Batch > 1)
        {
            yield return Change($"{step.Name} a fifth faster", x => x with { Stay = x.Stay.Times(Faster) });
        }
    }

    private static DayChange Trolley(ProductLine line, int m)
    {
        var move = line.Moves[m];
        string way = $"from {line.Steps[move.From].Name} to {line.Steps[move.To].Name}";
        return new DayChange(
            line.Steps[move.From].Name,
            FormattableString.Invariant($"one more trolley {way} ({move.Carriers + 1} in all)"),
            l => l.WithMove(m, x => x with { Carriers = x.Carriers + 1 }));
    }
}
