using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir;

/// <summary>The air that fans bring into one room and draw out of it.</summary>
/// <param name="In">In m3/s; null when no supply says a flow.</param>
/// <param name="Out">In m3/s; null when no exhaust says a flow.</param>
/// <param name="Volume">Of the room, in m3.</param>
/// <param name="Changes">Volumes of the room, in a second; null when no fan says a flow.</param>
/// <param name="SaidAt">The first fan that says a flow; null when none does.</param>
public sealed record RoomAir(
    Room Room, bool HasSupply, bool HasExhaust, Figure? In, Figure? Out, Figure Volume, Figure? Changes, SourceSpan? SaidAt)
{
    private static readonly Source Own = new("arithmetic: flows of the fans over the volume of the room", Origin.OwnAssumption);

    /// <summary>By the id of the room; every room has one.</summary>
    public static IReadOnlyDictionary<string, RoomAir> Of(PlanFacts facts)
    {
        var fans = facts.Plan.Services.OfType<AirPoint>().Where(s => s.Room is not null).ToLookup(s => s.Room!.Id);
        var found = new Dictionary<string, RoomAir>(StringComparer.Ordinal);
        foreach (var room in facts.Plan.Rooms)
        {
            found.TryAdd(room.Id, Of(room, [.. fans[room.Id]], facts.RoomSizes[room.Id].Volume, facts.Plan.Units));
        }

        return found;
    }

    private static RoomAir Of(Room room, List<AirPoint> fans, Figure volume, UnitSystem units)
    {
        var supplies = fans.FindAll(f => f is AirSupply);
        var exhausts = fans.FindAll(f => f is AirExhaust);
        var supply = Sum("air brought in", room, supplies, units);
        var exhaust = Sum("air drawn out", room, exhausts, units);
        var first = fans.Find(f => f.Amount is { } flow && IsFlow(flow));
        return new RoomAir(
            room, supplies.Count > 0, exhausts.Count > 0, supply, exhaust, volume, ChangesOf(room, supply, exhaust, volume, units),
            first?.Span);
    }

    private static Figure? Sum(string name, Room room, List<AirPoint> fans, UnitSystem units)
    {
        var flows = fans.Where(f => f.Amount is { } said && IsFlow(said)).Select(f => (Fan: f, Flow: f.Amount!.Value)).ToList();
        double sum = flows.Sum(f => f.Flow.Base);
        return flows.Count == 0 ? null : new Figure
        {
            Name = name,
            Of = room.Id,
            Value = sum,
            Kind = QuantityKind.AirFlow,
            Text = QuantityText.Of(sum, Measure.AirFlow, units),
            Inputs = [.. flows.Select(f => FigureInput.Said("fan", QuantityText.Of(f.Flow, units, Measure.AirFlow), f.Fan.Span))],
            Formula = "sum of the flows of the fans",
            Substituted = string.Join(" + ", flows.Select(f => QuantityText.Of(f.Flow, units, Measure.AirFlow))),
            Source = Own,
        };
    }

    /// <summary>What is blown in leaves somewhere, and what is drawn out comes in somewhere: the larger of the two is the change.</summary>
    private static Figure? ChangesOf(Room room, Figure? supply, Figure? exhaust, Figure volume, UnitSystem units)
    {
        var flow = new[] { supply, exhaust }.OfType<Figure>().MaxBy(f => f.Value);
        if (flow is null || volume.Value <= 0)
        {
            return null;
        }

        double changes = flow.Value / volume.Value;
        return new Figure
        {
            Name = "air changes",
            Of = room.Id,
            Value = changes,
            Kind = QuantityKind.Rate,
            Text = QuantityText.Of(changes, Measure.AirChanges, units),
            Inputs = [FigureInput.Of(flow), FigureInput.Of(volume)],
            Formula = "changes = the larger of air in and air out / volume",
            Substituted = $"{flow.Text} / {volume.Text}",
            Source = Own,
        };
    }

    private static bool IsFlow(Quantity rating) => rating.Unit.Kind is QuantityKind.AirFlow or QuantityKind.Flow;
}
