using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>How a station is set out: by touching a face, by a row outside the plan, or by a dimension inside it.</summary>
internal static class SettingOut
{
    /// <summary>Closer than this a thing touches.</summary>
    private static readonly Length Contact = Length.FromMillimetres(1);

    /// <summary>
    /// Things this near an outside wall are set out in the row outside it; further in, the lines would be too long. Own choice.
    /// </summary>
    private static readonly Length Near = Length.FromMillimetres(300);

    public static bool Touches(Room room, Plan plan, Side side) => Length.Abs(ShellBox(plan).Of(side) - room.Bounds.Of(side)) <= Contact;

    /// <summary>True when the station touches a face of its room that fixes it in this direction.</summary>
    public static bool IsFixed(Station station, bool alongX)
    {
        var (low, high) = alongX ? (Side.West, Side.East) : (Side.South, Side.North);
        return Distance(low, station.Bounds, station.Room.Bounds) <= Contact
            || Distance(high, station.Bounds, station.Room.Bounds) <= Contact;
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

    public static Length Distance(Side side, Box inner, Box outer) => Length.Abs(outer.Of(side) - inner.Of(side));

    public static Box BoxOf(Envelope box) => new(
        Length.FromMillimetres(box.MinX),
        Length.FromMillimetres(box.MinY),
        Length.FromMillimetres(box.MaxX),
        Length.FromMillimetres(box.MaxY));

    private static Box ShellBox(Plan plan) => BoxOf(plan.Shell.Finished.EnvelopeInternal);
}
