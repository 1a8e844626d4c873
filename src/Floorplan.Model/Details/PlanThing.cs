using Floorplan.Language.Text;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Details;

/// <summary>One thing of a plan with all that is said of it: what comparisons and programs read.</summary>
/// <param name="Kind">In words: <c>station</c>, <c>door</c>, <c>flow product</c>.</param>
/// <param name="Id">Empty for what a plan has once.</param>
/// <param name="Place">Its box on plan; null for what has no place.</param>
/// <param name="Details">Told in one system of units, so that a figure written in another is no difference.</param>
public sealed record PlanThing(string Kind, string Id, string Label, Box? Place, SourceSpan Span, IReadOnlyList<ThingDetail> Details)
{
    /// <summary>The same for the same thing of two plans.</summary>
    public string Key => $"{Kind} {Id}";
}
