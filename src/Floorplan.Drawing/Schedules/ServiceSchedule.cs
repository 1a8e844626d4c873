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
            [
                "id", "name", "kind", "room", "wall", $"datum x {unit}", $"datum y {unit}", $"height {unit}", "cold", "hot", $"size {unit}",
                $"size across {unit}", "form", $"outlet below {unit}", $"hose {unit}", "on", "circuit", "ratings", "words", "line"],
            [.. plan.Services.Select(s => Row(plan, s))]);
    }

    private static IReadOnlyList<object?> Row(Plan plan, ServicePoint point)
    {
        var datum = point.At - plan.Shell.Datum;
        return
        [
            point.Id,
            point.Label,
            point.Kind,
            point.Room?.Label ?? "",
            point.Wall?.ToString().ToLowerInvariant() ?? "",
            Schedule.Number(datum.X, plan),
            Schedule.Number(datum.Y, plan),
            Schedule.Number(point.Height, plan),
            point is WaterPoint { Cold: true },
            point is WaterPoint { Hot: true },
            Schedule.Number((point as ISizedPoint)?.Size, plan),
            Schedule.Number((point as Hole)?.SizeAcross, plan),
            point is Drain or Hole ? string.Concat(point.Terms) : "",
            Schedule.Number((point as Drain)?.OutletBelow, plan),
            Schedule.Number((point as Hose)?.Length, plan),
            (point as Hose)?.OnId ?? "",
            (point as CircuitPoint)?.Circuit ?? "",
            point switch
            {
                RatedPoint rated => string.Join("; ", rated.Ratings.Select(r => QuantityText.Of(r, plan.Units))),
                RoomService { Amount: { } amount } => QuantityText.Of(amount, plan.Units, point is AirPoint ? Measure.AirFlow : null),
                _ => "",
            },
            string.Join("; ", point is Drain { RunsToId: { } next } ? point.Terms.Append("runs to " + next) : point.Terms),
            point.Span.Position.Line,
        ];
    }
}
