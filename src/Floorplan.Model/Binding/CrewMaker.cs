using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;

namespace Floorplan.Model.Binding;

/// <summary>Adds to the day how many people work in which room or at which station.</summary>
internal static class CrewMaker
{
    /// <summary>Null when the plan says nothing of its day.</summary>
    public static Day? Make(PlanDraft draft, NameTable names)
    {
        if (draft.Day is not { } day)
        {
            return null;
        }

        var crew = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (who, people) in draft.Crew)
        {
            if (names.Find(who.Id)?.What is not ("room" or "station"))
            {
                names.ReportUnknown(who.Id, "room or station", who.Span, n => n.What is "room" or "station");
            }
            else
            {
                crew[who.Id] = crew.GetValueOrDefault(who.Id) + people;
            }
        }

        return day with { Crew = crew };
    }
}
