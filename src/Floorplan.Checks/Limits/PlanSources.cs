using Floorplan.Model;
using Floorplan.Model.Limits;

namespace Floorplan.Checks.Limits;

/// <summary>Which of several sources holds for one plan, for rules that cite a text without a figure.</summary>
public static class PlanSources
{
    /// <summary>For a fault that hurts wherever it stands, where no law of the place is known here.</summary>
    public static Source Practice { get; } = new(
        "practice of the trade; no text of this place, trade and plant is known here", Origin.CommonPractice);

    /// <summary>The source that binds the plan, the closest first.</summary>
    public static Source For(PlanHead head, IReadOnlyList<Source> sources) => Binding(head, sources) ?? Practice;

    /// <summary>Null where none binds.</summary>
    public static Source? Binding(PlanHead head, IReadOnlyList<Source> sources)
        => sources.Where(s => s.Scope.Of(head) == ScopeFit.Binds).OrderByDescending(s => s.Scope.Closeness(head)).FirstOrDefault();
}
