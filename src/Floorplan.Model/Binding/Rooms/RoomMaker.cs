using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>Puts rooms together from their floors and from what is said about them.</summary>
internal sealed class RoomMaker(PlanDraft draft, NameTable names, Reports reports)
{
    public IReadOnlyDictionary<string, Room> Make(IReadOnlyList<LaidRoom> laid)
    {
        var facts = new Dictionary<string, RoomFacts>(StringComparer.Ordinal);
        foreach (var room in draft.Rooms)
        {
            facts.TryAdd(room.Shape.Id, room);
        }

        var falls = Falls();
        var lux = draft.Services
            .Where(s => s is { Point: Light { Amount: not null }, Room: not null })
            .GroupBy(s => s.Room!.Value.Id)
            .ToDictionary(g => g.Key, g => g.Max(s => ((Light)s.Point).Amount!.Value.Base));
        return laid.ToDictionary(
            r => r.Id,
            r => Make(r, facts[r.Id], falls.GetValueOrDefault(r.Id), lux.TryGetValue(r.Id, out double light) ? light : null),
            StringComparer.Ordinal);
    }

    private Room Make(LaidRoom laid, RoomFacts facts, Falls? falls, double? lux)
    {
        var pieces = laid.Floor.ToPolygons();
        if (pieces.Count > 1)
        {
            reports.Error(
                "room-in-pieces", $"room `{laid.Id}` falls into {pieces.Count} separate pieces", laid.Draft.Span,
                "make each piece a room of its own");
        }

        return new Room
        {
            Id = laid.Id,
            Label = facts.Label.Length == 0 ? laid.Id : facts.Label,
            Class = facts.Class,
            Floor = pieces[0],
            Bounds = laid.Floor.Bounds,
            CeilingHeight = facts.CeilingHeight ?? draft.Shell.Shell.CeilingHeight,
            CarvedFrom = laid.CarvedFrom,
            KeepCelsius = facts.KeepCelsius,
            CoolingWatts = facts.CoolingWatts,
            Lamps = facts.Lamps,
            Lux = facts.Lux ?? lux,
            WashedDown = facts.WashedDown ?? facts.Class is HygieneClass.Dirty or HygieneClass.Clean,
            Falls = falls,
            Finishes = facts.Finishes,
            Span = laid.Draft.Span,
        };
    }

    private Dictionary<string, Falls> Falls()
    {
        var falls = new Dictionary<string, Falls>(StringComparer.Ordinal);
        foreach (var item in draft.Falls)
        {
            if (names.Find(item.Room.Id)?.What != "room")
            {
                names.ReportUnknown(item.Room.Id, "room", item.Room.Span, n => n.What == "room");
            }

            bool known = item.Drain is { } drain && names.Find(drain.Id)?.What == "drain";
            if (item.Drain is { } named && !known)
            {
                names.ReportUnknown(named.Id, "drain", named.Span, n => n.What == "drain");
            }

            if (!falls.TryAdd(item.Room.Id, new Falls(item.Slope, known ? item.Drain?.Id : null, item.Span)))
            {
                reports.Error("falls-twice", $"the falls of `{item.Room.Id}` are given twice", item.Span, "take one of them out");
            }
        }

        return falls;
    }
}
