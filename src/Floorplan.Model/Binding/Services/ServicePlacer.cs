using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Services;

/// <summary>
/// Puts service points where they were placed; hoses hang where their water point is, and what has no place of its own is in the middle
/// of its room.
/// </summary>
internal sealed class ServicePlacer(IReadOnlyDictionary<string, Room> rooms, NameTable names, Reports reports)
{
    public List<ServicePoint> Place(IReadOnlyList<(ServiceDraft Draft, Placeable? Placed)> services)
    {
        var made = new List<ServicePoint>();
        foreach (var (draft, _) in services)
        {
            draft.Lacks?.Invoke(reports);
        }

        foreach (var (draft, placed) in services)
        {
            if (placed is { Failed: false, Box: { } box })
            {
                made.Add(Joined(draft, draft.Point with { Room = rooms[placed.Room.Id], At = new PlanPoint(box.West, box.South) }));
            }
        }

        var standing = made.ToDictionary(p => p.Id, StringComparer.Ordinal);
        foreach (var (draft, _) in services.Where(s => s.Placed is null))
        {
            if ((draft.On is { } on ? Hung(draft, on, standing) : InRoom(draft)) is { } point)
            {
                made.Add(Joined(draft, point));
            }
        }

        return [.. made.OrderBy(p => p.Span.Start)];
    }

    private ServicePoint Joined(ServiceDraft draft, ServicePoint point) => draft.Join is { } join ? join(point, names) : point;

    private ServicePoint? Hung(ServiceDraft draft, NameRef on, Dictionary<string, ServicePoint> standing) =>
        names.Known(on, "water point") is { } id && standing.TryGetValue(id, out var point)
            ? draft.Point with { Room = point.Room, At = point.At, Wall = point.Wall }
            : null;

    private ServicePoint? InRoom(ServiceDraft draft)
    {
        if (draft.Room is not { } name)
        {
            reports.Error("in-no-room", $"`{draft.Point.Id}` is in no room", draft.Point.Span, "add `in` and the name of a room");
        }
        else if (rooms.TryGetValue(name.Id, out var room))
        {
            var middle = room.Floor.InteriorPoint.Coordinate;
            return draft.Point with { Room = room, At = new PlanPoint(Length.FromMillimetres(middle.X), Length.FromMillimetres(middle.Y)) };
        }
        else
        {
            names.Known(name, "room");
        }

        return null;
    }
}
