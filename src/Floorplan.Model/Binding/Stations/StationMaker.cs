using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Stations;

/// <summary>Puts a station together from what is said about it and the box that it was given.</summary>
internal static class StationMaker
{
    public static Station Make(StationDraft draft, int item, Room room, Box bounds)
    {
        var said = draft.Said;
        var height = draft.Size?.Height ?? UsualSizes.HeightOf(draft.Role);
        bool hung = said.Figure(StationTable.Hung) == true;
        var workHeight = said.Figure(StationTable.WorkHeight);

        // Hung without a height of its underside, it hangs right under the ceiling.
        var bottom = said.Figure(StationTable.Underside) ?? (hung ? Length.Max(Length.Zero, room.CeilingHeight - height) : Length.Zero);
        var top = bottom + height;
        return new Station
        {
            Id = draft.Id,
            Label = draft.Label ?? draft.Id,
            Role = draft.Role,
            Item = item,
            Room = room,
            Footprint = draft.Size is { Round: true } ? Footprint.Round(bounds) : bounds.ToPolygon(),
            Bounds = bounds,
            Diameter = draft.Size is { Round: true } ? bounds.Width : null,
            Bottom = bottom,
            Top = top,
            WorkHeight = workHeight ?? top,
            HeightIsSaid = draft.Size?.Height is not null || workHeight is not null,
            Hung = hung,
            Movable = said.Figure(StationTable.OnWheels) == true,
            Workers = Workers(said.Get(StationTable.Workers) ?? [], bounds),
            Clears = [.. (said.Get(StationTable.Clears) ?? []).Select(c => Clear(c, bounds))],
            Said = said,
            Purpose = draft.Purpose,
            Span = draft.Span,
        };
    }

    private static ClearSpace Clear(SaidClear clear, Box bounds) =>
        new(clear.Side, clear.Depth, clear.Purpose, Footprint.Beside(bounds, clear.Side, clear.Depth).ToPolygon(), clear.Span);

    private static List<WorkerPlace> Workers(IReadOnlyList<SaidWorkers> rows, Box bounds)
    {
        var places = new List<WorkerPlace>();
        foreach (var row in rows)
        {
            places.AddRange(WorkerRow.Along(bounds, row.Side, row.Count, row.Apart, places.Count + 1));
        }

        return places;
    }
}
