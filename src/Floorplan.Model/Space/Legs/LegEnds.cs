using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Legs;

/// <summary>Finds the places that a leg starts and ends at, for its mover.</summary>
internal sealed class LegEnds(Plan plan, Maps maps, StandingPlaces standing)
{
    /// <summary>
    /// How far a mover may stop from where a person stands at the thing, in mm: an arm's reach, 677 mm (5th-percentile woman,
    /// MIL-STD-1472G App. B). Farther off, there is no room to stand there.
    /// </summary>
    private const double ArmsLength = 677;

    /// <summary>Middle of a standing place before a hatch, in mm off its face.</summary>
    private static readonly double standOff = WorkerSize.Depth.Millimetres / 2;

    public LegEnd Of(Stop stop, Stop other, FloorMap map) => stop switch
    {
        StationStop s => At(map, s.Station.Room, standing.AtStation(s.Station, Where(other)), s.Name),
        OpeningStop { Opening: var o } => o.IsPassage ? Door(map, o) : Hatch(map, o, RoomOf(other)),
        ServiceStop s => Anywhere(map, s.Service.Room, s.Service.At.Coordinate, s.Name),
        RoomStop r => Anywhere(map, r.Room, r.Room.Floor.Centroid.Coordinate, r.Name),
        _ => Outside(map, other),
    };

    /// <summary>About where a stop is, or null for outside.</summary>
    public static Coordinate? Where(Stop stop) => stop switch
    {
        StationStop s => s.Station.Footprint.Centroid.Coordinate,
        OpeningStop o => o.Opening.Centre.Coordinate,
        ServiceStop s => s.Service.At.Coordinate,
        RoomStop r => r.Room.Floor.Centroid.Coordinate,
        _ => null,
    };

    private static Room? RoomOf(Stop stop) => stop switch
    {
        StationStop s => s.Station.Room,
        ServiceStop s => s.Service.Room,
        RoomStop r => r.Room,
        _ => null,
    };

    private LegEnd At(FloorMap map, Room room, Coordinate? place, string name) =>
        place is not null && map.Region(room)?.Settle(place) is { } free && free.Point.Distance(place) <= ArmsLength
            ? new LegEnd([free], null, null, null)
            : new LegEnd([], null, null, $"there is no room for {map.Mover.Text(plan.Units)} at {name}");

    private LegEnd Anywhere(FloorMap map, Room? room, Coordinate place, string name) =>
        map.Region(room)?.Settle(place) is { } free
            ? new LegEnd([free], null, null, null)
            : new LegEnd([], null, null, $"there is no free floor for {map.Mover.Text(plan.Units)} at {name}");

    private LegEnd Door(FloorMap map, Opening opening)
    {
        if (maps.Of(opening) is not { } passage || !map.Open.Contains(passage))
        {
            return new LegEnd([], null, opening, TooSmall(opening, map.Mover));
        }

        var places = new List<FreePlace>();
        foreach (var room in new[] { opening.RoomA, opening.RoomB })
        {
            if (map.Region(room)?.Settle(passage.Middle) is { } free && free.Point.Distance(passage.Middle) <= ArmsLength)
            {
                places.Add(free);
            }
        }

        return new LegEnd(places, null, opening, places.Count > 0 ? null : $"{opening.Id} is blocked for {map.Mover.Text(plan.Units)}");
    }

    private string TooSmall(Opening opening, Mover mover)
    {
        bool low = opening.Height.Millimetres < mover.HeightMm;
        string size = QuantityText.Length(low ? opening.Height : opening.Width, plan.Units);
        return opening.Sill.Millimetres > Passage.HighestStep
            ? $"the sill of {opening.Id} is {QuantityText.Length(opening.Sill, plan.Units)} high"
            : $"{opening.Id} is only {size} {(low ? "high" : "wide")}";
    }

    private LegEnd Hatch(FloorMap map, Opening opening, Room? otherRoom)
    {
        if (maps.Of(opening) is not { } passage)
        {
            return new LegEnd([], null, opening, $"{opening.Id} has no place");
        }

        var rooms = otherRoom is not null && passage.LeadsTo(otherRoom) ? new Room?[] { otherRoom } : [opening.RoomA, opening.RoomB];
        var places = new List<FreePlace>();
        foreach (var room in rooms)
        {
            var place = passage.Before(room, standOff);
            if (map.Region(room)?.Settle(place) is { } free && free.Point.Distance(place) <= ArmsLength)
            {
                places.Add(free);
            }
        }

        return new LegEnd(places, passage.Middle, opening, places.Count > 0
            ? null
            : $"there is no room for {map.Mover.Text(plan.Units)} at {opening.Id}");
    }

    private LegEnd Outside(FloorMap map, Stop other)
    {
        var doors = map.Open.Where(p => p.LeadsOut).ToList();
        if (other is OpeningStop o && doors.Find(p => p.Opening.Id == o.Opening.Id) is { } named)
        {
            doors = [named];
        }

        var places = doors.Select(map.JustOutside).OfType<FreePlace>().ToList();
        return new LegEnd(places, null, null, places.Count > 0 ? null : $"there is no door to outside for {map.Mover.Text(plan.Units)}");
    }
}
