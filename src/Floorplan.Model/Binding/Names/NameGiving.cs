using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Openings;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Names;

/// <summary>
/// Gives every thing of a plan its name, in the order of the file, so that of two the later one is told that it is taken.
/// </summary>
internal sealed class NameGiving(NameTable names)
{
    public void Give(PlanDraft draft)
    {
        var all = draft.Rooms.Select(r => (r.Shape.Id, What: "room", r.Shape.Span))
            .Concat(draft.Openings.Select(o => (o.Id, Word(o.Kind), o.Span)))
            .Concat(draft.Stations.Select(s => (s.Id, Word(s.Role), s.Span)))
            .Concat(draft.Services.Select(s => (s.Point.Id, s.Point.Noun, s.Point.Span)))
            .Concat(draft.Rails.Select(r => (r.Id, "rail", r.Span)));
        foreach (var (id, what, span) in all.OrderBy(n => n.Span.Start))
        {
            names.Add(id, what, span);
        }
    }

    private static string Word(StationRole role) => role switch
    {
        StationRole.Store => "store",
        StationRole.Bin => "bin",
        StationRole.Sink => "sink",
        _ => "station",
    };

    private static string Word(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => "door",
        OpeningKind.Hatch => "hatch",
        OpeningKind.Window => "window",
        OpeningKind.Chute => "chute",
        OpeningKind.Vent => "vent",
        _ => "opening",
    };
}
