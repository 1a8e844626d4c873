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

    /// <summary>A corner further in than this is one of an L, not of the wall's own thickness.</summary>
    private static readonly Length DeepCorner = Length.FromMillimetres(500);

    public static void Add(Plan plan, DimensionSet set, OuterRows rows)
    {
        foreach (var side in (Side[])[Side.North, Side.South, Side.West, Side.East])
        {
            if (rows != OuterRows.WithoutItemsAndOpenings)
            {
                AddOpenings(plan, set, side);
            }

            if (rows == OuterRows.All)
            {
                AddStations(plan, set, side);
            }
        }

        AddRooms(plan, set, Side.South, Side.North);
        AddRooms(plan, set, Side.West, Side.East);
        AddCorners(plan, set, Side.North);
        AddCorners(plan, set, Side.East);
        foreach (var side in (Side[])[Side.South, Side.West])
        {
            AddOverall(plan, set, side, plan.Shell.Finished, "dimension:inside");
            AddOverall(plan, set, side, plan.Shell.Outside, "dimension:outside");
        }
    }

    private static void AddOpenings(Plan plan, DimensionSet set, Side side)
    {
        // The lines begin at each hole, so that they also find it in the short wall of an L.
        var stops = new List<DimensionStop>();
        foreach (var opening in plan.Openings.Where(o => o.InShell && o.Wall == side))
        {
            var face = SettingOut.BoxOf(opening.Reveal.EnvelopeInternal).Of(side);
            stops.Add(new(side.RunsEastWest() ? opening.Start.X : opening.Start.Y, face));
            stops.Add(new(side.RunsEastWest() ? opening.End.X : opening.End.Y, face));
        }

        AddChain(plan, set, side, stops, $"dimension:openings:{side.Letter()}");
    }

    private static void AddStations(Plan plan, DimensionSet set, Side side)
    {
        var stops = new List<Length>();
        var rooms = new HashSet<Room>();
        foreach (var station in plan.Stations.Where(s => SettingOut.OuterSide(s, plan, side.RunsEastWest()) == side))
        {
            stops.AddRange(Ends(station.Bounds, side));
            rooms.Add(station.Room);
        }

        stops.AddRange(rooms.Where(r => SettingOut.Touches(r, plan, side)).SelectMany(r => Ends(r.Bounds, side)));
        AddChain(plan, set, side, [.. stops.Select(l => new DimensionStop(l, Face(plan, side)))], $"dimension:stations:{side.Letter()}");
    }

    private static void AddChain(Plan plan, DimensionSet set, Side side, List<DimensionStop> stops, string group)
    {
        if (stops.Count > 0)
        {
            var ends = Stops(plan, side, [.. Ends(SettingOut.BoxOf(plan.Shell.Finished.EnvelopeInternal), side)]);
            AddRow(set, side, [.. stops, .. ends], group);
        }
    }

    private static Length[] Ends(Box box, Side side) => side.RunsEastWest() ? [box.West, box.East] : [box.South, box.North];

    private static void AddRooms(Plan plan, DimensionSet set, Side side, Side opposite)
    {
        var first = RoomStops(plan, side);
        var second = RoomStops(plan, opposite);
        AddRoomRow(plan, set, side, first);
        if (!second.SetEquals(first))
        {
            AddRoomRow(plan, set, opposite, second);
        }
    }

    private static HashSet<Length> RoomStops(Plan plan, Side side) =>
    [
        .. plan.Rooms.Where(r => SettingOut.Touches(r, plan, side))
            .SelectMany(r => Ends(r.Bounds, side)),
    ];

    private static void AddRoomRow(Plan plan, DimensionSet set, Side side, HashSet<Length> stops) =>
        AddRow(set, side, Stops(plan, side, stops), $"dimension:rooms:{side.Letter()}");

    /// <summary>The corners of a shed that is not a plain rectangle.</summary>
    private static void AddCorners(Plan plan, DimensionSet set, Side side) =>
        AddRow(set, side, Stops(plan, side, Corners(plan.Shell.Finished, side)), $"dimension:corners:{side.Letter()}");

    /// <summary>A row of two stops would only repeat the overall inside size.</summary>
    private static void AddRow(DimensionSet set, Side side, List<DimensionStop> stops, string group)
    {
        if (stops.Select(s => s.Along).Distinct().Count() is > 2 and <= MostStops)
        {
            set.Add(new DimensionRow(side, DimensionForm.Chain, stops, group));
        }
    }

    private static void AddOverall(Plan plan, DimensionSet set, Side side, Polygon outline, string group) =>
        set.Add(new DimensionRow(side, DimensionForm.Overall, Stops(plan, side, Corners(outline, side)), group));

    private static List<DimensionStop> Stops(Plan plan, Side side, HashSet<Length> along)
        => [.. along.Order().Select(l => new DimensionStop(l, FaceAt(plan, side, l)))];

    /// <summary>At a corner of an L its own wall; else the outside face.</summary>
    private static Length FaceAt(Plan plan, Side side, Length along)
    {
        var corners = plan.Shell.Finished.Coordinates.Concat(plan.Shell.Outside.Coordinates)
            .Select(c => (Along: side.RunsEastWest() ? c.X : c.Y, Across: side.RunsEastWest() ? c.Y : c.X))
            .Where(c => Math.Abs(c.Along - along.Millimetres) < 0.01)
            .Select(c => c.Across)
            .ToList();
        if (corners.Count == 0)
        {
            return Face(plan, side);
        }

        var nearest = Length.FromMillimetres(side is Side.North or Side.East ? corners.Max() : corners.Min());
        return Length.Abs(nearest - Face(plan, side)) > DeepCorner ? nearest : Face(plan, side);
    }

    /// <summary>Extension lines begin at the outside face of the shell, also where a door swings out further.</summary>
    private static Length Face(Plan plan, Side side) => SettingOut.BoxOf(plan.Shell.Outside.EnvelopeInternal).Of(side);

    private static HashSet<Length> Corners(Polygon outline, Side side) =>
        [.. outline.ExteriorRing.Coordinates.Select(c => Length.FromMillimetres(side.RunsEastWest() ? c.X : c.Y))];
}
