using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Binding.Rooms;

namespace Floorplan.Model.Binding;

/// <summary>
/// Makes the plan of what the text says: gives the names, lays out the rooms, finds the places of all things, and makes the things.
/// What has a mistake is reported and left out; the rest stands.
/// </summary>
internal sealed class PlanAssembler(PlanDraft draft, Reports reports)
{
    private readonly NameTable names = new(reports);

    public Plan Assemble()
    {
        new NameGiving(names).Give(draft);
        var rooms = LaidRooms.Of(draft, names, reports);
        var things = new PlaceFinder(draft, names, reports).Find(rooms);
        var plan = new PlanMaker(draft, names, reports).Make(rooms, things);
        Heap.Tell(plan.Stations, reports);
        return plan;
    }
}
