using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Rails;

/// <summary>Hangs overhead rails: their points are told from the finished south-west corner of their room.</summary>
internal sealed class RailMaker(NameTable names, IReadOnlyDictionary<string, Room> rooms, Reports reports)
{
    public IReadOnlyList<OverheadRail> Make(IReadOnlyList<RailDraft> rails) => [.. rails.Select(Make).OfType<OverheadRail>()];

    private OverheadRail? Make(RailDraft rail)
    {
        foreach (var opening in rail.Through.Where(o => names.Find(o.Id)?.Placeable?.Wall is null))
        {
            names.ReportUnknown(opening.Id, "opening", opening.Span, n => n.Placeable?.Wall is not null);
        }

        var corner = new PlanPoint(Language.Quantities.Length.Zero, Language.Quantities.Length.Zero);
        if (rail.Room is { } name)
        {
            if (!rooms.TryGetValue(name.Id, out var room))
            {
                if (names.Find(name.Id)?.What != "room")
                {
                    names.ReportUnknown(name.Id, "room", name.Span, n => n.What == "room");
                }

                return null;
            }

            corner = new PlanPoint(room.Bounds.West, room.Bounds.South);
        }

        if (rail.Path.Count < 2)
        {
            reports.Error(
                "rail-too-short", $"rail `{rail.Id}` needs at least two points", rail.Span, "write where it starts and where it ends");
            return null;
        }

        var path = Shape.Factory.CreateLineString([.. rail.Path.Select(p => (corner + p).Coordinate)]);
        return new OverheadRail(rail.Id, rail.Label, path, rail.Height, rail.Pitch, [.. rail.Through.Select(t => t.Id)], rail.Span);
    }
}
