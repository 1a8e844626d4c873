using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Measuring;

/// <summary>Rooms whose light the plan says in any way: a level, lamps, or a <c>light</c> statement without a figure.</summary>
internal static class LitRooms
{
    /// <summary>Their ids.</summary>
    public static IReadOnlySet<string> Of(Plan plan) => new HashSet<string>(
        plan.Rooms.Where(r => r.Lux is not null || r.Lamps is not null).Select(r => r.Id)
            .Concat(plan.Services.OfType<Light>().Where(s => s.Room is not null).Select(s => s.Room!.Id)),
        StringComparer.Ordinal);
}
