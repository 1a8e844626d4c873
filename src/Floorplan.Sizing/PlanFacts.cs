using Floorplan.Model;
using Floorplan.Model.Space;

namespace Floorplan.Sizing;

/// <summary>
/// All that is worked out from one plan, each thing once. Rules, sheets, schedules, CSV and JSON of a plan get the same object.
/// A fact is worked out when it is first asked for, and kept. For any number of threads: one lock for all facts, because
/// calculations use the floor space, which is for one thread.
/// </summary>
/// <remarks>The properties stand in one file for each subject, <c>PlanFacts.SUBJECT.cs</c>.</remarks>
public sealed partial class PlanFacts(Plan plan, FloorSpace space)
{
    private readonly Lock working = new();

    /// <summary>Takes over what earlier facts hold and what is still right; the answers are those of new facts.</summary>
    /// <param name="plan">The plan as it is now.</param>
    /// <param name="before">Of any plan; they must not be asked any more. Null when there were none.</param>
    public PlanFacts(Plan plan, PlanFacts? before)
        : this(plan, new FloorSpace(plan, before?.Space))
    {
        keptBringingIn = before?.keptBringingIn;
        dayBefore = before?.day ?? before?.dayBefore;
        keptRuns = before?.keptRuns;
    }

    public Plan Plan { get; } = plan;

    /// <summary>For one thread.</summary>
    public FloorSpace Space { get; } = space;

    /// <summary>
    /// The kept value, or what <paramref name="work"/> makes of these facts; it may ask for other facts, but not in a circle.
    /// </summary>
    private T Once<T>(ref T? kept, Func<PlanFacts, T> work)
        where T : class
    {
        if (Volatile.Read(ref kept) is { } known)
        {
            return known;
        }

        lock (working)
        {
            if (kept is null)
            {
                Volatile.Write(ref kept, work(this));
            }

            return kept!;
        }
    }
}
