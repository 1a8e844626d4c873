using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Placing;

/// <summary>Where things are set out from: the finished west and south faces of their room. Exact, since places are.</summary>
public static class FromFaces
{
    /// <summary>From the faces of its room to the west and the south side of a thing.</summary>
    public static (SetOut West, SetOut South) Of(Station station) =>
        (new(station.Room.Bounds.West, station.Bounds.West), new(station.Room.Bounds.South, station.Bounds.South));

    /// <summary>From the end of its wall to the near edge of an opening; null for one that belongs to no room.</summary>
    public static (Room Room, Side Face, SetOut Along)? Of(Opening opening) => RoomOf(opening) is not { } room ? null
        : opening.Wall.RunsEastWest() ? (room, Side.West, new(room.Bounds.West, opening.Start.X))
        : (room, Side.South, new(room.Bounds.South, opening.Start.Y));

    /// <summary>The room whose faces an opening is set out from.</summary>
    public static Room? RoomOf(Opening opening) => opening.RoomA ?? opening.RoomB;
}
