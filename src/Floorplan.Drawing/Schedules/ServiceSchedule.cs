using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Schedules;

/// <summary>Every point of water, drain, power, light and air with its place from the steel datum.</summary>
internal static class ServiceSchedule
{
    public static Schedule Of(Plan plan)
    {
        string unit = Schedule.Unit(plan);
        return new Schedule(
            "services",
            "Services",
            ["id", "name", "kind", "room", "wall", $"datum x {unit}", $"datum y {unit}", $"height {unit}", "cold", "hot", $"size {unit}", $"size across {unit}", "form", $"outlet below {unit}", $"hose {unit}", "on", "circuit", "ratings", "words", "line"],
            [.. plan.Services.Select(s => Row(plan, s))]);
    }

    private static IReadOnlyList<object?> Row(Plan plan, ServicePoint point)
    {
        var datum = point.At - plan.Shell.Datum;
        return
        [
            point.Id,
            point.Label,
            Kind(point.Kind),
            point.Room?.Label ?? "",
            point.Wall?.ToString().ToLowerInvariant() ?? "",
            Schedule.Number(datum.X, plan),
            Schedule.Number(datum.Y, plan),
            Schedule.Number(point.Height, plan),
            point.Cold,
            point.Hot,
            Schedule.Number(point.Size, plan),
            Schedule.Number(point.SizeAcross, plan),
            point.Form,
            Schedule.Number(point.OutletBelow, plan),
            Schedule.Number(point.HoseLength, plan),
            point.OnId ?? "",
            point.Circuit,
            string.Join("; ", point.Ratings.Select(r => QuantityText.Of(r, plan.Units, point.Kind is ServiceKind.AirSupply or ServiceKind.AirExhaust ? Measure.AirFlow : null))),
            string.Join("; ", point.Words),
            point.Span.Position.Line,
        ];
    }

    private static string Kind(ServiceKind kind) => kind switch
    {
        ServiceKind.AirSupply => "air supply",
        ServiceKind.AirExhaust => "air exhaust",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
