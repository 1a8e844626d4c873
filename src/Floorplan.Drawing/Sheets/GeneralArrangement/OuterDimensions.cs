using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>The rows outside the plan: openings, stations, rooms, then overall inside and outside.</summary>
internal static class OuterDimensions
{
    /// <summary>More stops than this in one row cannot be read; the key table gives all places anyway. Own choice.</summary>
    private const int MostStops = 60;

    public static void Add(Plan plan, DimensionSet set)
    {
        foreach (var side in (Side[])[Side.North, Side.South, Side.West, Side.East])
        {
            AddOpenings(plan, set, side);
            AddStations(plan, set, side);
        }

        AddRooms(plan, set, Side.South, Side.North);
        AddRooms(plan, set, Side.West, Side.East);
        AddCorners(plan, set, Side.North);
        AddCorners(plan, set, Side.East);
        foreach (var side in (Side[])[Side.South, Side.West])
        {
            AddOverall(set, side, plan.Shell.Finished, "dimension:inside");
            AddOverall(set, side, plan.Shell.Outside, "dimension:outside");
        }
    }

    private static void AddOpenings(Plan plan, DimensionSet set, Side side)
    {
        var stops = new List<DimensionStop>();
        foreach (var opening in plan.Openings.Where(o => o.InShell && o.Wall == side))
        {
            var from = SettingOut.BoxOf(opening.Reveal.EnvelopeInternal).Of(side);
            stops.Add(new(side.RunsEastWest() ? opening.Start.X : opening.Start.Y, from));
            stops.Add(new(side.RunsEastWest() ? opening.End.X : opening.End.Y, from));
        }

        AddChain(plan, set, side, stops, $"dimension:openings:{side.Letter()}");
    }

    private static void AddStations(Plan plan, DimensionSet set, Side side)
    {
        var stops = new List<DimensionStop>();
        var rooms = new HashSet<Room>();
        foreach (var station in plan.Stations.Where(s => SettingOut.OuterSide(s, plan, side.RunsEastWest()) == side))
        {
            var from = station.Bounds.Of(side);
            stops.Add(new(side.RunsEastWest() ? station.Bounds.West : station.Bounds.South, from));
            stops.Add(new(side.RunsEastWest() ? station.Bounds.East : station.Bounds.North, from));
            rooms.Add(station.Room);
        }

        foreach (var room in rooms.Where(r => SettingOut.Touches(r, plan, side)))
        {
            stops.Add(new(side.RunsEastWest() ? room.Bounds.West : room.Bounds.South));
            stops.Add(new(side.RunsEastWest() ? room.Bounds.East : room.Bounds.North));
        }

        AddChain(plan, set, side, stops, $"dimension:stations:{side.Letter()}");
    }

    private static void AddChain(Plan plan, DimensionSet set, Side side, List<DimensionStop> stops, string group)
    {
        if (stops.Count == 0 || stops.Count > MostStops)
        {
            return;
        }

        var inside = plan.Shell.Finished.EnvelopeInternal;
        stops.Add(new(Length.FromMillimetres(side.RunsEastWest() ? inside.MinX : inside.MinY)));
        stops.Add(new(Length.FromMillimetres(side.RunsEastWest() ? inside.MaxX : inside.MaxY)));
        set.Add(new DimensionRow(side, DimensionForm.Chain, stops, group));
    }

    private static void AddRooms(Plan plan, DimensionSet set, Side side, Side opposite)
    {
        var first = RoomStops(plan, side);
        var second = RoomStops(plan, opposite);
        AddRoomRow(set, side, first);
        if (!second.SetEquals(first))
        {
            AddRoomRow(set, opposite, second);
        }
    }

    private static HashSet<Length> RoomStops(Plan plan, Side side) =>
    [
        .. plan.Rooms.Where(r => SettingOut.Touches(r, plan, side))
            .SelectMany(r => side.RunsEastWest() ? new[] { r.Bounds.West, r.Bounds.East } : [r.Bounds.South, r.Bounds.North]),
    ];

    private static void AddRoomRow(DimensionSet set, Side side, HashSet<Length> stops)
    {
        // One room is the overall inside size.
        if (stops.Count is > 2 and <= MostStops)
        {
            set.Add(new DimensionRow(side, DimensionForm.Chain, [.. stops.Select(s => new DimensionStop(s))], $"dimension:rooms:{side.Letter()}"));
        }
    }

    /// <summary>The corners of a shed that is not a plain rectangle.</summary>
    private static void AddCorners(Plan plan, DimensionSet set, Side side)
    {
        if (!plan.Shell.Finished.IsRectangle)
        {
            set.Add(new DimensionRow(side, DimensionForm.Chain, Stops(plan.Shell.Finished, side), $"dimension:corners:{side.Letter()}"));
        }
    }

    private static void AddOverall(DimensionSet set, Side side, Polygon outline, string group) =>
        set.Add(new DimensionRow(side, DimensionForm.Overall, Stops(outline, side), group));

    private static List<DimensionStop> Stops(Polygon outline, Side side) =>
        [.. outline.ExteriorRing.Coordinates.Select(c => Length.FromMillimetres(side.RunsEastWest() ? c.X : c.Y)).Distinct().Order().Select(l => new DimensionStop(l))];
}
