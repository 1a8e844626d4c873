using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>Air of one room, as the plan says them.</summary>
internal static class RoomServices
{
    /// <summary>The flows, <c>yes</c> without a figure, empty without air.</summary>
    public static string Air<T>(Plan plan, Room room)
        where T : AirPoint
    {
        var fans = plan.Services.OfType<T>().Where(s => s.Room?.Id == room.Id).ToList();
        var flows = fans.Select(f => f.Amount).OfType<Quantity>().Select(a => QuantityText.Of(a, plan.Units, Measure.AirFlow)).ToList();
        return fans.Count == 0 ? "" : flows.Count == 0 ? "yes" : string.Join(" + ", flows);
    }
}
