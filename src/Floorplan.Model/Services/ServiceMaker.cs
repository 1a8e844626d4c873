using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Services;

/// <summary>Puts service points where they were placed; hoses hang where their water point is, and what has no place of its own is in the middle of its room.</summary>
internal sealed class ServiceMaker(IReadOnlyDictionary<string, Room> rooms, NameTable names, Reports reports)
{
    public List<ServicePoint> Make(IReadOnlyList<(ServiceDraft Draft, Placeable? Placed)> services)
    {
        var made = new List<ServicePoint>();
        var water = new Dictionary<string, ServicePoint>(StringComparer.Ordinal);
        foreach (var (draft, _) in services.Where(s => s.Draft.Point.Kind == ServiceKind.Hole))
        {
            Complete(draft.Point);
        }

        foreach (var (draft, placed) in services.Where(s => s.Placed is not null))
        {
            if (placed is { Failed: false, Box: { } box })
            {
                var point = draft.Point with { Room = rooms[placed.Room.Id], At = new PlanPoint(box.West, box.South), RunsToId = Drain(draft.RunsTo) };
                made.Add(point);
                water[point.Id] = point;
            }
        }

        foreach (var (draft, _) in services.Where(s => s.Placed is null))
        {
            if (draft.On is { } on)
            {
                AddHung(made, draft, on, water);
            }
            else
            {
                AddInRoom(made, draft);
            }
        }

        return [.. made.OrderBy(p => p.Span.Start)];
    }

    /// <summary>Who cuts a hole has to know through what, how high and how large.</summary>
    private void Complete(ServicePoint hole)
    {
        if (hole.Wall is null && hole.Form.Length == 0)
        {
            reports.Error("hole-incomplete", $"`{hole.Id}` does not say what it goes through", hole.Span, "write the wall, `floor` or `roof`, such as `hole h1 roof in ROOM`");
        }
        else if (hole.Wall is not null && hole.Height is null)
        {
            reports.Error("hole-incomplete", $"`{hole.Id}` is in a wall and does not say how high its middle is", hole.Span, "add `height` and a length above the finished floor");
        }
        else if (hole.Size is null)
        {
            reports.Error("hole-incomplete", $"`{hole.Id}` does not say how large it is", hole.Span, $"add its diameter, such as `{reports.Example("50 mm", "2 in")}`, or two sides, such as `{reports.Example("400 mm x 300 mm", "16 in x 12 in")}`");
        }
    }

    private string? Drain(NameRef? next)
    {
        if (next is not { } name)
        {
            return null;
        }

        if (names.Find(name.Id)?.What == "drain")
        {
            return name.Id;
        }

        names.ReportUnknown(name.Id, "drain", name.Span, n => n.What == "drain");
        return null;
    }

    private void AddHung(List<ServicePoint> made, ServiceDraft draft, NameRef on, Dictionary<string, ServicePoint> points)
    {
        if (names.Find(on.Id)?.What != "water point")
        {
            names.ReportUnknown(on.Id, "water point", on.Span, n => n.What == "water point");
        }
        else if (points.TryGetValue(on.Id, out var point))
        {
            made.Add(draft.Point with { Room = point.Room, At = point.At, Wall = point.Wall, OnId = on.Id });
        }
    }

    private void AddInRoom(List<ServicePoint> made, ServiceDraft draft)
    {
        if (draft.Room is not { } name)
        {
            reports.Error("in-no-room", $"`{draft.Point.Id}` is in no room", draft.Point.Span, "add `in` and the name of a room");
        }
        else if (rooms.TryGetValue(name.Id, out var room))
        {
            var middle = room.Floor.InteriorPoint.Coordinate;
            made.Add(draft.Point with
            {
                Room = room,
                RunsToId = Drain(draft.RunsTo),
                At = new PlanPoint(Language.Quantities.Length.FromMillimetres(middle.X), Language.Quantities.Length.FromMillimetres(middle.Y)),
            });
        }
        else if (names.Find(name.Id)?.What != "room")
        {
            names.ReportUnknown(name.Id, "room", name.Span, n => n.What == "room");
        }
    }
}
