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
            if (IsPlace(who, names))
            {
                crew[who.Id] = crew.GetValueOrDefault(who.Id) + people;
            }
        }

        return day with
        {
            Crew = crew,
            Helps = [.. draft.Helps.Where(h => IsPlace(h.Where, names) & IsPlace(h.From, names)).Select(h => (h.Where.Id, h.From.Id))],
        };
    }

    /// <summary>Whether there is such a room or station; tells it where there is none.</summary>
    private static bool IsPlace(NameRef name, NameTable names)
    {
        bool isPlace = names.Find(name.Id)?.What is "room" or "station";
        if (!isPlace)
        {
            names.ReportUnknown(name.Id, "room or station", name.Span, n => n.What is "room" or "station");
        }

        return isPlace;
    }
}
