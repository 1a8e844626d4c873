using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>Where a person stands to use a thing.</summary>
internal sealed class StandingPlaces(Plan plan, Maps maps)
{
    /// <summary>Middle of a standing place off the face of the thing: half the depth of one worker.</summary>
    private static readonly double standOff = WorkerSize.Depth.Millimetres / 2;

    private readonly Dictionary<string, Coordinate?> inFront = [];

    public Coordinate? At(Stop stop, Room? inRoom) => stop switch
    {
        StationStop s => AtStation(s.Station, null),
        OpeningStop o => AtOpening(o.Opening, inRoom),
        ServiceStop s => Settle(s.Service.Room, s.Service.At.Coordinate),
        RoomStop r => Settle(r.Room, r.Room.Floor.Centroid.Coordinate),
        _ => null,
    };

    /// <summary>The worker place that is nearest to another place, or the free floor in front of a station without workers.</summary>
    public Coordinate? AtStation(Station station, Coordinate? other)
    {
        if (station.Workers.Count > 0)
        {
            return other is null
                ? station.Workers[0].Centre.Coordinate
                : station.Workers.Select(w => w.Centre.Coordinate).MinBy(c => c.Distance(other));
        }

        return inFront.TryGetValue(station.Id, out var known) ? known : inFront[station.Id] = InFront(station);
    }

    /// <summary>The middle of a door, or the place before a hatch in one of its rooms.</summary>
    public Coordinate? AtOpening(Opening opening, Room? inRoom)
    {
        if (maps.Of(opening) is not { } passage)
        {
            return null;
        }

        if (opening.IsPassage)
        {
            return passage.Middle;
        }

        var room = inRoom is not null && passage.LeadsTo(inRoom) ? inRoom : opening.RoomA ?? opening.RoomB;
        return Settle(room, passage.Before(room, standOff));
    }

    /// <summary>
    /// Before the side that has the most free floor in front of it: a kept-clear side first, then the longer side, then the one that
    /// faces the room.
    /// </summary>
    private Coordinate? InFront(Station station)
    {
        if (station.Room.Floor.IsEmpty || maps.For(Mover.Person).Region(station.Room) is not { } region)
        {
            return null;
        }

        var middle = station.Room.Floor.Centroid.Coordinate;
        var best = (Off: double.PositiveInfinity, Rank: 0.0, Place: (Coordinate?)null);
        foreach (var (face, length) in Faces(station))
        {
            if (region.Settle(face) is not { } free)
            {
                continue;
            }

            // Whole millimetres, so that rounding never decides between two sides that are equally free.
            double off = Math.Round(free.Point.Distance(face));
            bool kept = station.Clears.Any(c => c.Floor.EnvelopeInternal.Contains(face));
            double rank = free.Point.Distance(middle) - length - (kept ? 1e6 : 0);
            if (off < best.Off || (off == best.Off && rank < best.Rank))
            {
                best = (off, rank, free.Point);
            }
        }

        return best.Place;
    }

    private static IEnumerable<(Coordinate Place, double Length)> Faces(Station station)
    {
        var ring = station.Diameter is null ? ConvexRing.Of(station.Footprint) : [];
        if (ring.Count is < 3 or > 8)
        {
            var box = station.Footprint.EnvelopeInternal;
            ring = [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)];
        }

        for (int i = 0; i < ring.Count; i++)
        {
            Coordinate a = ring[i], b = ring[(i + 1) % ring.Count];
            double length = a.Distance(b);
            if (length > 0)
            {
                var half = Line.At(a, b, 0.5);
                yield return (
                    new Coordinate(half.X + ((b.Y - a.Y) / length * standOff), half.Y - ((b.X - a.X) / length * standOff)), length);
            }
        }
    }

    private Coordinate? Settle(Room? room, Coordinate p) =>
        plan.Rooms.Count == 0 && room is not null ? null : maps.For(Mover.Person).Region(room)?.Settle(p)?.Point;
}
