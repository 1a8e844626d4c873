using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>Light and air of one room, as the plan says them.</summary>
internal static class RoomServices
{
    /// <summary>In lux, by a <c>light</c> statement or in the room itself; the brighter of several. Null when the plan says none.</summary>
    public static double? Lux(Plan plan, Room room)
    {
        var said = plan.Services.Where(s => s.Kind == ServiceKind.Light && s.Room?.Id == room.Id && s.Ratings.Count > 0).Select(s => s.Ratings[0].Base).ToList();
        return said.Append(room.Lux ?? 0).Max() is > 0 and var lux ? lux : null;
    }

    /// <summary><c>540 lux</c> or <c>50 fc</c>.</summary>
    public static string Text(double lux, UnitSystem units) => units == UnitSystem.Metric
        ? lux.ToString("0", CultureInfo.InvariantCulture) + " lux"
        : (lux * InchPound.SquareMetresPerSquareFoot).ToString("0", CultureInfo.InvariantCulture) + " fc";

    /// <summary>The flows as written, <c>yes</c> without a figure, empty without air.</summary>
    public static string Air(Plan plan, Room room, ServiceKind kind)
    {
        var fans = plan.Services.Where(s => s.Kind == kind && s.Room?.Id == room.Id).ToList();
        var flows = fans.SelectMany(f => f.Ratings).Select(r => r.ToString()).ToList();
        return fans.Count == 0 ? "" : flows.Count == 0 ? "yes" : string.Join(" + ", flows);
    }
}
