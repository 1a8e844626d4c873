using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>How a station is set out: by touching a face, by a row outside the plan, or by a dimension inside it.</summary>
internal static class SettingOut
{
    /// <summary>Closer than this a thing touches.</summary>
    private static readonly Length Contact = Length.FromMillimetres(1);

    /// <summary>Things this near an outside wall are set out in the row outside it; further in, the lines would be too long. Own choice.</summary>
    private static readonly Length Near = Length.FromMillimetres(300);

    public static bool Touches(Room room, Plan plan, Side side) => Length.Abs(Face(side, ShellBox(plan)) - Face(side, room.Bounds)) <= Contact;

    /// <summary>True when the station touches a face of its room that fixes it in this direction.</summary>
    public static bool IsFixed(Station station, bool alongX)
    {
        var (low, high) = alongX ? (Side.West, Side.East) : (Side.South, Side.North);
        return Distance(low, station.Bounds, station.Room.Bounds) <= Contact || Distance(high, station.Bounds, station.Room.Bounds) <= Contact;
    }

    /// <summary>The side whose row sets the station out in this direction; null when it touches a face or stands too far in.</summary>
    public static Side? OuterSide(Station station, Plan plan, bool alongX)
    {
        if (IsFixed(station, alongX))
        {
            return null;
        }

        var (low, high) = alongX ? (Side.South, Side.North) : (Side.West, Side.East);
        var shell = ShellBox(plan);
        var toLow = Distance(low, station.Bounds, shell);
        var toHigh = Distance(high, station.Bounds, shell);
        var nearest = toLow <= toHigh ? low : high;
        return Length.Min(toLow, toHigh) <= Near ? nearest : null;
    }

    public static Length Distance(Side side, Box inner, Box outer) => Length.Abs(Face(side, outer) - Face(side, inner));

    public static Length Face(Side side, Box box) => side switch
    {
        Side.North => box.North,
        Side.South => box.South,
        Side.East => box.East,
        _ => box.West,
    };

    private static Box ShellBox(Plan plan)
    {
        var inside = plan.Shell.Finished.EnvelopeInternal;
        return new Box(
            Length.FromMillimetres(inside.MinX),
            Length.FromMillimetres(inside.MinY),
            Length.FromMillimetres(inside.MaxX),
            Length.FromMillimetres(inside.MaxY));
    }
}
