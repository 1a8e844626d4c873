using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Limits;
using Floorplan.Model.Openings;

namespace Floorplan.Model.Binding;

/// <summary>Reports things that <c>accept</c> names and the plan does not have.</summary>
internal static class AcceptanceMaker
{
    /// <param name="openings">Those that the shell brings have names too.</param>
    public static IReadOnlyList<Acceptance> Make(PlanDraft draft, NameTable names, IReadOnlyList<Opening> openings, Reports reports)
    {
        foreach (var thing in draft.Acceptances.SelectMany(a => a.Things))
        {
            if (!thing.IsOutside && names.Find(thing.Id) is null && openings.All(o => o.Id != thing.Id))
            {
                reports.Error(
                    "unknown-name", $"there is nothing called `{thing.Id}` in this plan", thing.Span,
                    reports.Near(thing.Id, names.All.Select(n => n.Id)));
            }
        }

        return [.. draft.Acceptances.Select(a => a.Acceptance)];
    }
}
