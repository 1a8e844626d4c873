using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Flows;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Openings;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Binding.Rails;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Binding.Services;
using Floorplan.Model.Binding.Stations;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Model.Binding;

/// <summary>Makes every thing of the plan once the rooms are laid out and the places are known.</summary>
internal sealed class PlanMaker(PlanDraft draft, NameTable names, Reports reports)
{
    public Plan Make(LaidRooms laid, PlacedThings things)
    {
        var rooms = new RoomMaker(draft, names, reports).Make(laid.All);
        var openings = Openings(rooms, things);
        if (names.Find(CargoDoors.Id) is null
            && CargoDoorMaker.Of(draft.Shell, laid.Walls, laid.All, rooms, draft.Shell.Shell.Span) is { } doors)
        {
            openings.Add(doors);
        }

        var stations = new StationPlacer(rooms, names, reports).Place(things.Stations);
        var services = new ServicePlacer(rooms, names, reports).Place(things.Services);
        var stops =
            new StopFinder(
                names, stations.ToDictionary(s => s.Id), openings.ToDictionary(o => o.Id), services.ToDictionary(s => s.Id), rooms,
                reports);
        return new Plan
        {
            Source = draft.Source,
            Head = draft.Head,
            Shell = draft.Shell.Shell,
            Rooms = [.. laid.All.Select(r => rooms[r.Id])],
            Partitions = Partitions(laid),
            Openings = openings,
            Stations = stations,
            Rails = new RailMaker(names, rooms, reports).Make(draft.Rails),
            Services = services,
            Flows = new FlowMaker(stops).Make(draft.Flows),
            Day = CrewMaker.Make(draft, names),
            Limits = draft.Limits,
            Acceptances = AcceptanceMaker.Make(draft, names, openings, reports),
            SheetWishes = draft.SheetWishes,
        };
    }

    private List<Partition> Partitions(LaidRooms laid)
    {
        var height = draft.PartitionHeight ?? draft.Shell.Shell.CeilingHeight;
        return [.. PartitionLayout.Of(laid.All, draft.Shell.Finished, draft.PartitionThickness, height)
            .Select(p => p with { BuiltOf = draft.PartitionBuild })];
    }

    private List<Opening> Openings(IReadOnlyDictionary<string, Room> rooms, PlacedThings things)
    {
        var maker = new OpeningMaker(rooms, reports);
        return [.. things.Openings.Select(o => maker.Make(o.Opening, o.Placed)).OfType<Opening>()];
    }
}
