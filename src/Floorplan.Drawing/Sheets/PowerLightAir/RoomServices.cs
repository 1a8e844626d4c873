using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>Air of one room, as the plan says them.</summary>
internal static class RoomServices
{
    /// <summary>The flows, <c>yes</c> without a figure, empty without air.</summary>
    public static string Air(Plan plan, Room room, ServiceKind kind)
    {
        var fans = plan.Services.Where(s => s.Kind == kind && s.Room?.Id == room.Id).ToList();
        var flows = fans.SelectMany(f => f.Ratings).Select(r => QuantityText.Of(r, plan.Units, Measure.AirFlow)).ToList();
        return fans.Count == 0 ? "" : flows.Count == 0 ? "yes" : string.Join(" + ", flows);
    }
}
