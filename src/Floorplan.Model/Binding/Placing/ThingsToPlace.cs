using Floorplan.Language.Text;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Openings;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Binding.Stations;

namespace Floorplan.Model.Binding.Placing;

/// <summary>Gathers all that gets a place: openings with their walls, stations and services with their rooms.</summary>
internal sealed class ThingsToPlace(PlanDraft draft, NameTable names, Reports reports)
{
    public PlacedThings Gather(LaidRooms rooms) => new([.. Openings(rooms)], [.. Stations()], [.. Services()]);

    private List<(OpeningToPlace, Placeable)> Openings(LaidRooms rooms)
    {
        var found = new List<(OpeningToPlace, Placeable)>();
        var walls = new OpeningWalls(names, rooms.Layout, rooms.Walls, reports);
        foreach (var item in names.Kept(draft.Openings, o => o.Id, o => o.Span))
        {
            if (walls.Find(item) is { } opening)
            {
                found.Add(
                    (
                        opening,
                        Known(new Placeable
                        {
                            Id = item.Id,
                            Room = opening.Room,
                            Place = item.Place,
                            Span = item.Span,
                            Wall = opening.Wall
                        })));
            }
        }

        rooms.Layout.ReportGap(walls.OverGaps);
        return found;
    }

    private IEnumerable<(StationDraft, Placeable)> Stations()
    {
        var size = new StationSize(draft.Shell.Finished.Bounds, reports);
        foreach (var item in names.Kept(draft.Stations, s => s.Id, s => s.Span))
        {
            if (RoomOf(item.Room, item.Id, item.Span) is { } room && size.IsGiven(item))
            {
                yield return (item, Known(new Placeable
                {
                    Id = item.Id,
                    Room = room,
                    Width = item.StandingWidth,
                    Depth = item.StandingDepth,
                    Place = item.Place,
                    Span = item.Span,
                }));
            }
        }
    }

    private IEnumerable<(ServiceDraft, Placeable?)> Services()
    {
        foreach (var item in names.Kept(draft.Services, s => s.Point.Id, s => s.Point.Span))
        {
            if (!item.HasPlace)
            {
                yield return (item, null);
            }
            else if (RoomOf(item.Room, item.Point.Id, item.Point.Span) is { } room)
            {
                yield return (item, Known(new Placeable { Id = item.Point.Id, Room = room, Place = item.Place, Span = item.Point.Span }));
            }
        }
    }

    /// <summary>Lets other things name it in their places.</summary>
    private Placeable Known(Placeable thing)
    {
        names.Find(thing.Id)!.Placeable = thing;
        return thing;
    }

    private LaidRoom? RoomOf(NameRef? room, string id, SourceSpan span)
    {
        if (room is not { } name)
        {
            reports.Error("in-no-room", $"`{id}` is in no room", span, "add `in` and the name of a room");
            return null;
        }

        names.Known(name, "room");
        return names.Find(name.Id)?.Room;
    }
}
