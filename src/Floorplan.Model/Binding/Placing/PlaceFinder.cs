using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Rooms;

namespace Floorplan.Model.Binding.Placing;

/// <summary>Finds where every thing is, from the relations that the plan says.</summary>
internal sealed class PlaceFinder(PlanDraft draft, NameTable names, Reports reports)
{
    public PlacedThings Find(LaidRooms rooms)
    {
        var things = new ThingsToPlace(draft, names, reports).Gather(rooms);
        Choose(things.All);
        new Solver(names, draft.PartitionThickness, reports).Solve(things.All);
        return things;
    }

    /// <summary>Which relations fix which axis of each thing.</summary>
    private void Choose(IReadOnlyList<Placeable> things)
    {
        var references = new References(names, reports);
        var axes = new AxisChoice(names, reports);
        var along = new OpeningAxis(reports);
        foreach (var thing in things)
        {
            references.Check(thing);
            if (thing.Failed)
            {
                continue;
            }

            if (thing.Wall is null)
            {
                axes.Choose(thing);
            }
            else
            {
                along.Choose(thing);
            }
        }
    }
}
