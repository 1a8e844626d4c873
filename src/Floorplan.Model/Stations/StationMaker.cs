using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Stations;

/// <summary>Puts a station together from what is said about it and the box that it was given.</summary>
internal static class StationMaker
{
    public static Station Make(string id, StationRole role, int item, StationFacts facts, Room room, Box bounds, SourceSpan span)
    {
        var height = facts.Height ?? UsualSizes.HeightOf(role);

        // Hung without a height of its underside, it hangs right under the ceiling.
        var bottom = facts.Bottom ?? (facts.Hung ? Length.Max(Length.Zero, room.CeilingHeight - height) : Length.Zero);
        var top = bottom + height;
        return new Station
        {
            Id = id,
            Label = facts.Label ?? id,
            Role = role,
            Item = item,
            Room = room,
            Footprint = facts.Round ? Footprint.Round(bounds) : bounds.ToPolygon(),
            Bounds = bounds,
            Diameter = facts.Round ? bounds.Width : null,
            Bottom = bottom,
            Top = top,
            WorkHeight = facts.WorkHeight ?? top,
            HeightIsSaid = facts.Height is not null || facts.WorkHeight is not null,
            Hung = facts.Hung,
            Movable = facts.Movable,
            Workers = Workers(facts, bounds),
            Clears = [.. facts.Clears.Select(c => new ClearSpace(c.Side, c.Depth, c.Purpose, Footprint.Beside(bounds, c.Side, c.Depth).ToPolygon(), c.Span))],
            Needs = facts.Needs,
            Wastes = facts.Wastes,
            Work = facts.Work,
            WeightEmpty = facts.WeightEmpty,
            WeightFull = facts.WeightFull,
            Purpose = facts.Purpose,
            Volume = facts.Volume,
            AirGap = facts.AirGap,
            Circuit = facts.Circuit,
            Inlet = facts.Inlet,
            Span = span,
        };
    }

    private static List<WorkerPlace> Workers(StationFacts facts, Box bounds)
    {
        var places = new List<WorkerPlace>();
        foreach (var row in facts.Workers)
        {
            places.AddRange(WorkerRow.Along(bounds, row.Side, row.Count, row.Apart, places.Count + 1));
        }

        return places;
    }
}
