using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Openings;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>All rooms with their floors, and the walls between them and to outside.</summary>
internal sealed record LaidRooms(IReadOnlyList<LaidRoom> All, RoomLayout Layout, WallFinder Walls)
{
    public static LaidRooms Of(PlanDraft draft, NameTable names, Reports reports)
    {
        var layout = new RoomLayout(draft.Shell.Finished, draft.PartitionThickness, names, reports);
        var laid = layout.Lay([.. names.Kept(draft.Rooms, r => r.Shape.Id, r => r.Shape.Span).Select(r => r.Shape)]);
        return new LaidRooms(laid, layout, new WallFinder(draft.Shell, laid, draft.PartitionThickness));
    }
}
