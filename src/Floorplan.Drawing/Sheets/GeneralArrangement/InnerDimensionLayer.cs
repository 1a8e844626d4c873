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

/// <summary>
/// Dimensions inside the plan, where no row outside reaches: openings in partitions, carved rooms, stations in mid floor.
/// </summary>
public sealed class InnerDimensionLayer(Plan plan) : PlanLayer(plan)
{
    /// <summary>More would hide the plan; the tables give every place. Own choice.</summary>
    private const int Most = 40;

    /// <summary>From the wall to a dimension line beside it, paper mm.</summary>
    private const double BesideWall = 5;

    public override void Draw(PlanCanvas canvas)
    {
        var pen = new InnerDimensionPen(canvas.Scene, canvas.Transform, canvas.View.Box, canvas.Tape, canvas.Standard);
        int drawn = 0;
        foreach (var wish in Wanted(Plan, canvas).Where(d => d.From != d.To))
        {
            if (drawn == Most)
            {
                return;
            }

            drawn += pen.Draw(wish.From, wish.To, wish.Aside, wish.Group) ? 1 : 0;
        }
    }

    private static IEnumerable<Wish> Wanted(Plan plan, PlanCanvas canvas)
    {
        var beside = Length.FromMillimetres(BesideWall * canvas.Transform.Denominator);
        foreach (var opening in plan.Openings.Where(o => !o.InShell && (o.RoomA ?? o.RoomB) is not null))
        {
            yield return ToOpening(opening, (opening.RoomA ?? opening.RoomB)!, beside);
        }

        foreach (var room in plan.Rooms)
        {
            foreach (var wish in OfRoom(room, plan, beside))
            {
                yield return wish;
            }
        }

        foreach (var station in plan.Stations)
        {
            foreach (var wish in OfStation(station, plan))
            {
                yield return wish;
            }
        }
    }

    /// <summary>From the nearer face of the room to the near edge of the hole, beside the wall.</summary>
    private static Wish ToOpening(Opening opening, Room room, Length beside)
    {
        bool alongX = opening.Wall.RunsEastWest();
        var box = room.Bounds;
        var (start, end) = alongX ? (opening.Start.X, opening.End.X) : (opening.Start.Y, opening.End.Y);
        var (low, high) = alongX ? (box.West, box.East) : (box.South, box.North);
        bool fromLow = Length.Abs(start - low) <= Length.Abs(high - end);
        var (across, aside) = opening.Wall switch
        {
            Side.North => (box.North - beside, (0, -1)),
            Side.South => (box.South + beside, (0, 1)),
            Side.East => (box.East - beside, (-1, 0)),
            _ => (box.West + beside, (1, 0)),
        };
        var (from, to) = fromLow ? (low, start) : (end, high);
        string group = "dimension:opening:" + opening.Id;
        return alongX ? new(new(from, across), new(to, across), aside, group) : new(new(across, from), new(across, to), aside, group);
    }

    private static IEnumerable<Wish> OfRoom(Room room, Plan plan, Length beside)
    {
        if (!SettingOut.Touches(room, plan, Side.South) && !SettingOut.Touches(room, plan, Side.North))
        {
            yield return new(
                new(room.Bounds.West, room.Bounds.South + beside), new(room.Bounds.East, room.Bounds.South + beside), (0, 1),
                "dimension:room:" + room.Id);
        }

        if (!SettingOut.Touches(room, plan, Side.West) && !SettingOut.Touches(room, plan, Side.East) && !SpansShell(room, plan))
        {
            yield return new(
                new(room.Bounds.East - beside, room.Bounds.South), new(room.Bounds.East - beside, room.Bounds.North), (-1, 0),
                "dimension:room:" + room.Id);
        }
    }

    private static bool SpansShell(Room room, Plan plan)
        => SettingOut.Touches(room, plan, Side.South) && SettingOut.Touches(room, plan, Side.North);

    private static IEnumerable<Wish> OfStation(Station station, Plan plan)
    {
        foreach (bool alongX in (bool[])[true, false])
        {
            if (SettingOut.IsFixed(station, alongX) || SettingOut.OuterSide(station, plan, alongX) is not null)
            {
                continue;
            }

            var (low, high) = alongX ? (Side.West, Side.East) : (Side.South, Side.North);
            var nearer =
                SettingOut.Distance(low, station.Bounds, station.Room.Bounds) <= SettingOut.Distance(
                    high, station.Bounds, station.Room.Bounds) ? low : high;
            var from = station.Room.Bounds.Of(nearer);
            var to = station.Bounds.Of(nearer);
            var middle = station.Bounds.Centre;
            string group = "dimension:station:" + station.Id;
            yield return alongX
                ? new(new(from, middle.Y), new(to, middle.Y), (0, 1), group)
                : new(new(middle.X, from), new(middle.X, to), (1, 0), group);
        }
    }

    /// <param name="Aside">Unit vector across the dimension, to where it may be moved.</param>
    private sealed record Wish(PlanPoint From, PlanPoint To, (int X, int Y) Aside, string Group);
}
