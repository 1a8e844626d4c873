using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>A computed level of the finished floor.</summary>
/// <param name="Level">Zero or below: from the highest point of the room.</param>
public sealed record SpotLevel(Room Room, Coordinate At, Length Level, bool IsDrain)
{
    private const int MostCorners = 12;

    /// <summary>The corners of every room with a fall, and its drain. Level = slope x distance to the drain, counted down from the farthest corner.</summary>
    public static IReadOnlyList<SpotLevel> Of(Plan plan)
    {
        var levels = new List<SpotLevel>();
        foreach (var room in plan.Rooms)
        {
            if (room.Falls is not { DrainId: { } id } falls || plan.Services.OfType<Drain>().FirstOrDefault(s => s.Id == id) is not { } drain)
            {
                continue;
            }

            var corners = room.Floor.ExteriorRing.Coordinates.Skip(1).ToList();
            double farthest = corners.Max(c => c.Distance(drain.At.Coordinate));
            Length At(double distance) => Length.FromMillimetres(-falls.Slope * (farthest - distance));
            levels.AddRange(corners.Take(MostCorners).Select(c => new SpotLevel(room, c, At(c.Distance(drain.At.Coordinate)), false)));
            levels.Add(new SpotLevel(room, drain.At.Coordinate, At(0), true));
        }

        return levels;
    }

    /// <summary>Whole millimetres or sixteenths: <c>±0</c>, <c>-24</c>, <c>-15/16"</c>.</summary>
    public string Text(UnitSystem units) => QuantityText.Level(Level, units);
}
