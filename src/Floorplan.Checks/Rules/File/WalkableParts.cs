using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.File;

/// <summary>
/// Whether a person can walk from outside to a place; asked part by part of each room's free floor, so that many places cost no more
/// than few.
/// </summary>
internal sealed class WalkableParts(FloorSpace space)
{
    private readonly Dictionary<string, IReadOnlyList<Part>> byRoom = [];

    public bool CanBeReached(Room room, Coordinate at)
    {
        if (!byRoom.TryGetValue(room.Id, out var parts))
        {
            var floor = space.FreeFloor(room, Mover.Person);
            parts = [.. Enumerable.Range(0, floor.NumGeometries).Select(i => floor.GetGeometryN(i)).Where(g => !g.IsEmpty)
                .Select(g => new Part(g))];
            byRoom[room.Id] = parts;
        }

        var part = parts.FirstOrDefault(p => p.Floor.EnvelopeInternal.Contains(at) && p.Locator.Locate(at) != Location.Exterior);
        return part is null ? LeadsOut(room, at) : part.LeadsOut ??= LeadsOut(room, part.Floor.InteriorPoint.Coordinate);
    }

    private bool LeadsOut(Room room, Coordinate at)
        => space.FindExit(room, at, Mover.Person, o => o.RoomA is null || o.RoomB is null) is not null;

    private sealed class Part(Geometry floor)
    {
        public Geometry Floor { get; } = floor;

        public IndexedPointInAreaLocator Locator { get; } = new(floor);

        public bool? LeadsOut { get; set; }
    }
}
