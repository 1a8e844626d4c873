using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>Dimensions inside the plan, where no row outside reaches: openings in partitions, carved rooms, stations in mid floor.</summary>
internal static class InnerDimensions
{
    /// <summary>More would hide the plan; the tables give every place. Own choice.</summary>
    private const int Most = 40;

    /// <summary>From the wall to a dimension line beside it, paper mm.</summary>
    private const double BesideWall = 5;

    public static void Draw(Plan plan, PlanCanvas canvas, DimensionSet set)
    {
        int drawn = 0;
        foreach (var (from, to, group) in Wanted(plan, canvas).Where(d => d.From != d.To))
        {
            if (drawn == Most)
            {
                return;
            }

            drawn += set.DrawInner(canvas.Scene, canvas.Transform, from, to, group) ? 1 : 0;
        }
    }

    private static IEnumerable<(PlanPoint From, PlanPoint To, string Group)> Wanted(Plan plan, PlanCanvas canvas)
    {
        var beside = Length.FromMillimetres(BesideWall * canvas.Transform.Denominator);
        foreach (var opening in plan.Openings.Where(o => !o.InShell && (o.RoomA ?? o.RoomB) is not null))
        {
            yield return (ToOpening(opening, (opening.RoomA ?? opening.RoomB)!, beside).From, ToOpening(opening, (opening.RoomA ?? opening.RoomB)!, beside).To, "dimension:opening:" + opening.Id);
        }

        foreach (var room in plan.Rooms)
        {
            foreach (var (from, to) in OfRoom(room, plan, beside * 2))
            {
                yield return (from, to, "dimension:room:" + room.Id);
            }
        }

        foreach (var station in plan.Stations)
        {
            foreach (var (from, to) in OfStation(station, plan))
            {
                yield return (from, to, "dimension:station:" + station.Id);
            }
        }
    }

    /// <summary>From the nearer face of the room to the near edge of the hole, beside the wall.</summary>
    private static (PlanPoint From, PlanPoint To) ToOpening(Opening opening, Room room, Length beside)
    {
        bool alongX = opening.Wall.RunsEastWest();
        var box = room.Bounds;
        var (start, end) = alongX ? (opening.Start.X, opening.End.X) : (opening.Start.Y, opening.End.Y);
        var (low, high) = alongX ? (box.West, box.East) : (box.South, box.North);
        bool fromLow = Length.Abs(start - low) <= Length.Abs(high - end);
        var across = opening.Wall switch
        {
            Side.North => box.North - beside,
            Side.South => box.South + beside,
            Side.East => box.East - beside,
            _ => box.West + beside,
        };
        var (from, to) = fromLow ? (low, start) : (end, high);
        return alongX ? (new(from, across), new(to, across)) : (new(across, from), new(across, to));
    }

    private static IEnumerable<(PlanPoint From, PlanPoint To)> OfRoom(Room room, Plan plan, Length beside)
    {
        if (!SettingOut.Touches(room, plan, Side.South) && !SettingOut.Touches(room, plan, Side.North))
        {
            yield return (new(room.Bounds.West, room.Bounds.South + beside), new(room.Bounds.East, room.Bounds.South + beside));
        }

        if (!SettingOut.Touches(room, plan, Side.West) && !SettingOut.Touches(room, plan, Side.East) && !SpansShell(room, plan))
        {
            yield return (new(room.Bounds.East - beside, room.Bounds.South), new(room.Bounds.East - beside, room.Bounds.North));
        }
    }

    private static bool SpansShell(Room room, Plan plan) => SettingOut.Touches(room, plan, Side.South) && SettingOut.Touches(room, plan, Side.North);

    private static IEnumerable<(PlanPoint From, PlanPoint To)> OfStation(Station station, Plan plan)
    {
        foreach (bool alongX in (bool[])[true, false])
        {
            if (SettingOut.IsFixed(station, alongX) || SettingOut.OuterSide(station, plan, alongX) is not null)
            {
                continue;
            }

            var (low, high) = alongX ? (Side.West, Side.East) : (Side.South, Side.North);
            var nearer = SettingOut.Distance(low, station.Bounds, station.Room.Bounds) <= SettingOut.Distance(high, station.Bounds, station.Room.Bounds) ? low : high;
            var from = station.Room.Bounds.Of(nearer);
            var to = station.Bounds.Of(nearer);
            var middle = station.Bounds.Centre;
            yield return alongX ? (new(from, middle.Y), new(to, middle.Y)) : (new(middle.X, from), new(middle.X, to));
        }
    }
}
