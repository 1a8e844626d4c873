using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>
/// Answers about free floor, ways and reach on one plan. Everything is in plan millimetres. Answers are computed when
/// first asked for and kept; the object is for one thread.
/// </summary>
public interface IFloorSpace
{
    Plan Plan { get; }

    /// <summary>Where the middle of a mover can be inside a room: the room less obstacles of its height, less half its width.</summary>
    Geometry FreeFloor(Room room, Mover mover);

    /// <summary>The shortest way from one place to another (null room is outside), or null. Start and end are moved to the nearest free floor of their room.</summary>
    /// <param name="mayPass">Which openings may be used; null allows all walkable ones.</param>
    Route? Find(Room? fromRoom, Coordinate from, Room? toRoom, Coordinate to, Mover mover, Func<Opening, bool>? mayPass = null);

    /// <summary>The shortest way out of the building through any opening that <paramref name="isExit"/> takes, or null.</summary>
    Route? FindExit(Room room, Coordinate from, Mover mover, Func<Opening, bool> isExit);

    /// <summary>The longest of the shortest ways out from anywhere in a room, or null when some part has no way; from the farthest standing place.</summary>
    Route? FarthestExit(Room room, Mover mover, Func<Opening, bool> isExit);

    /// <summary>The real route of every leg of every flow, in order.</summary>
    IReadOnlyList<LegRoute> LegRoutes { get; }

    /// <summary>Every pair of legs of different flows that share floor, whatever their period.</summary>
    IReadOnlyList<Meeting> Meetings { get; }

    /// <summary>The narrowest free width along a route between fixed things up to a person's height, and where; looks at most <paramref name="upToMm"/> wide.</summary>
    (double WidthMm, Coordinate At) NarrowestAlong(Route route, double upToMm);

    /// <summary>
    /// The straight distance in mm from a worker's shoulder line (middle of the standing place, at its bench edge) to
    /// the nearest point of a target, going round things taller than work height that stand between; infinity when enclosed.
    /// </summary>
    double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm);

    /// <summary>Where a person stands to use a thing: its worker place, else the nearest free floor in front of it; null when there is none.</summary>
    Coordinate? StandingAt(Stop stop, Room? inRoom = null);

    /// <summary>Stations, fixtures and other solids whose footprint comes within a box, by spatial index.</summary>
    IReadOnlyList<Station> StationsNear(Envelope envelope);
}
