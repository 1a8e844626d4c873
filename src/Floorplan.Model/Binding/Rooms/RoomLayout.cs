using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Shapes;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>
/// Lays rooms out in the finished shell: slices between centre lines of partitions, then areas, carved out of the
/// room that they are in. Reports overlaps, floor without a room, and rooms that reach beyond the shell.
/// </summary>
internal sealed class RoomLayout(Region shell, Length thickness, NameTable names, Reports reports)
{
    private readonly Box bounds = shell.Bounds;
    private readonly List<LaidRoom> laid = [];
    private readonly Dictionary<string, int> byId = new(StringComparer.Ordinal);
    private readonly AreaPlacing areas = new(names, thickness, reports);
    private readonly Dictionary<string, int> depth = new(StringComparer.Ordinal);
    private bool isTooDeep;
    private Region? gap;

    // Several rooms carved from one are all measured from the faces that it had before.
    private readonly Dictionary<string, LaidRoom> beforeCarving = new(StringComparer.Ordinal);

    /// <summary>Rooms in the order given, less those that cannot be laid.</summary>
    public IReadOnlyList<LaidRoom> Lay(IReadOnlyList<RoomDraft> drafts)
    {
        foreach (var draft in drafts)
        {
            if (draft.Slice is { } slice)
            {
                LaySlice(draft, slice);
            }
        }

        LayAreas([.. drafts.Where(d => d.Slice is null && d.Area is not null)]);
        ReportOverlaps();
        gap = laid.Count < drafts.Count || laid.Count == 0 ? null : FloorWithoutRoom();
        var order = drafts.Select((d, i) => (d.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        return [.. laid.OrderBy(r => order[r.Id])];
    }

    private Length LowHalf => thickness / 2;

    private Length HighHalf => thickness - LowHalf;

    private void LaySlice(RoomDraft draft, Slice slice)
    {
        var centres = slice.Of(bounds);
        if (centres.West >= bounds.East || centres.South >= bounds.North)
        {
            ReportOutside(draft, slice, "lies");
            return;
        }

        if (centres.Width <= Length.Zero || centres.Depth <= Length.Zero)
        {
            reports.Error(
                "room-back-to-front", $"room `{draft.Id}` ends where it starts or before", slice.Span,
                "write the smaller distance first, such as `from 1200 to 3600`");
            return;
        }

        if (centres.West < bounds.West || centres.East > bounds.East || centres.South < bounds.South || centres.North > bounds.North)
        {
            ReportOutside(draft, slice, "reaches");
            return;
        }

        // A bound on the shell's own face needs no partition.
        var faces = new Box(
            centres.West == bounds.West ? centres.West : centres.West + HighHalf,
            centres.South == bounds.South ? centres.South : centres.South + HighHalf,
            centres.East == bounds.East ? centres.East : centres.East - LowHalf,
            centres.North == bounds.North ? centres.North : centres.North - LowHalf);
        var floor = shell.Within(faces);
        if (floor.IsEmpty)
        {
            reports.Error(
                "room-too-thin", $"room `{draft.Id}` has no floor left between its partitions, which are {reports.Text(thickness)} thick",
                slice.Span, "make it wider");
            return;
        }

        Keep(new LaidRoom(draft, floor, null));
    }

    private void ReportOutside(RoomDraft draft, Slice slice, string how) => reports.Error(
        "room-outside-shell",
        $"room `{draft.Id}` {how} beyond the shell, which is {reports.Text(bounds.Width)} x {reports.Text(bounds.Depth)} between "
            + "finished faces",
        slice.Span,
        how == "lies" ? "start it at a smaller distance, or take a longer shell" : "end it at a smaller distance, or write `to east`");

    // An area may be in another area, in any order of the file.
    private void LayAreas(List<RoomDraft> waiting)
    {
        bool moved = true;
        while (moved && waiting.Count > 0)
        {
            moved = false;
            foreach (var draft in waiting.ToList())
            {
                var area = draft.Area!;
                if (area.In is null || byId.ContainsKey(area.In.Text))
                {
                    LayArea(draft, area);
                    waiting.Remove(draft);
                    moved = true;
                }
            }
        }

        // What is in a room that was too deep only follows from that.
        foreach (var draft in waiting.Where(_ => !isTooDeep))
        {
            var holder = draft.Area!.In!;
            if (names.Find(holder.Text)?.What != "room")
            {
                names.ReportUnknown(holder.Text, "room", holder.Span, n => n.What == "room");
            }
            else if (waiting.Any(w => w.Id == holder.Text))
            {
                reports.Error(
                    "room-in-no-room", $"room `{draft.Id}` is in `{holder.Text}`, which has no place of its own", holder.Span,
                    "put it in a room that is a slice of the shell");
            }
        }
    }

    private void LayArea(RoomDraft draft, RoomArea area)
    {
        var parent = area.In is null ? null : laid[byId[area.In.Text]];
        depth[draft.Id] = parent is null ? 0 : depth.GetValueOrDefault(parent.Id) + 1;
        if (depth[draft.Id] > PlanBounds.DeepestRooms)
        {
            TellTooDeep(draft, area);
            return;
        }

        if (areas.Find(draft, area, HolderOf(draft, parent)) is not { } box)
        {
            return;
        }

        if ((parent?.Floor ?? shell).Within(box).AreaSquareMillimetres != Region.Of(box).AreaSquareMillimetres)
        {
            string holder = parent is null ? "the shell" : $"room `{parent.Id}`";
            reports.Error(
                "room-does-not-fit",
                $"room `{draft.Id}` is {reports.Text(area.Width)} x {reports.Text(area.Depth)} and does not fit in {holder} there",
                area.Span, "make it smaller or move it");
            return;
        }

        if (parent is not null)
        {
            var grown = new Box(box.West - thickness, box.South - thickness, box.East + thickness, box.North + thickness);
            var rest = parent.Floor.Less(grown);
            if (rest.IsEmpty)
            {
                reports.Error("room-swallowed", $"room `{draft.Id}` leaves nothing of room `{parent.Id}`", area.Span, "make it smaller");
                return;
            }

            Keep(parent with { Floor = rest });
        }

        Keep(new LaidRoom(draft, Region.Of(box), parent?.Id));
    }

    private void TellTooDeep(RoomDraft draft, RoomArea area)
    {
        if (!isTooDeep)
        {
            reports.Error(
                "rooms-too-deep", $"room `{draft.Id}` is in a room that is in a room, more than {PlanBounds.DeepestRooms} in a row",
                area.Span, "put rooms beside each other, in one room");
        }

        isTooDeep = true;
    }

    private LaidRoom HolderOf(RoomDraft draft, LaidRoom? parent)
    {
        if (parent is null)
        {
            return new LaidRoom(draft, shell, null);
        }

        beforeCarving.TryAdd(parent.Id, parent);
        return beforeCarving[parent.Id];
    }

    private void Keep(LaidRoom room)
    {
        if (names.Find(room.Id) is { } named)
        {
            named.Room = room;
        }

        if (byId.TryAdd(room.Id, laid.Count))
        {
            laid.Add(room);
        }
        else
        {
            laid[byId[room.Id]] = room;
        }
    }

    private void ReportOverlaps()
    {
        var tree = new STRtree<int>();
        for (int i = 0; i < laid.Count; i++)
        {
            tree.Insert(laid[i].Floor.Bounds.ToPolygon().EnvelopeInternal, i);
        }

        for (int i = 0; i < laid.Count; i++)
        {
            foreach (int k in tree.Query(laid[i].Floor.Bounds.ToPolygon().EnvelopeInternal).Where(k => k < i).Order())
            {
                if (laid[i].Floor.Boxes.Any(laid[k].Floor.Touches))
                {
                    var (first, second) = laid[i].Draft.Span.Start < laid[k].Draft.Span.Start ? (laid[i], laid[k]) : (laid[k], laid[i]);
                    reports.Error(
                        "rooms-overlap",
                        $"rooms `{first.Id}` and `{second.Id}` overlap",
                        second.Draft.Span,
                        second.Draft.Area is { In: null }
                            ? $"to carve it out of `{first.Id}` add `in {first.Id}`"
                            : "let one end where the other starts",
                        new RelatedSpan(first.Draft.Span, $"`{first.Id}` is here"));
                }
            }
        }
    }

    /// <summary>Whether floor that belongs to no room lies between these two, so that they have no wall in common.</summary>
    public bool AreParted(LaidRoom one, LaidRoom other)
        => gap is { } rest && Touches(one, rest) && Touches(other, rest);

    /// <summary>Tells of floor that belongs to no room: advice, or an error when openings are meant to lead over it.</summary>
    public void ReportGap(IReadOnlyList<RelatedSpan> openings)
    {
        if (gap is not { } rest)
        {
            return;
        }

        var box = rest.Bounds;
        bool across = box.Width == bounds.Width && box.Depth < bounds.Depth;
        string where = across
            ? $"from {reports.Text(box.South)} to {reports.Text(box.North)} from the south wall"
            : $"from {reports.Text(box.West)} to {reports.Text(box.East)} from the west end";
        var beyond = laid.Where(r => r.CarvedFrom is null && Touches(r, rest)).OrderBy(r => r.Floor.Bounds.West)
            .ThenBy(r => r.Floor.Bounds.South).LastOrDefault() ?? laid[^1];
        reports.Add(new Diagnostic(
            openings.Count > 0 ? Severity.Error : Severity.Warning,
            "floor-without-room",
            $"floor {where} belongs to no room",
            beyond.Draft.Span,
            "let the rooms on both sides meet at one distance, or add a room there",
            openings.Count > 0 ? openings : null));
    }

    // A room's share of a partition that it does not have is left out of the gap, so it is counted twice here.
    private bool Touches(LaidRoom room, Region rest)
        => room.Floor.Boxes.Any(
            b => rest.Touches(
                new Box(b.West - (thickness * 2), b.South - (thickness * 2), b.East + (thickness * 2), b.North + (thickness * 2))));

    private Region? FloorWithoutRoom()
    {
        var rest = shell;
        foreach (var room in laid)
        {
            foreach (var box in room.Floor.Boxes)
            {
                rest = rest.Less(new Box(box.West - thickness, box.South - thickness, box.East + thickness, box.North + thickness));
            }
        }

        return rest.IsEmpty ? null : rest;
    }
}
