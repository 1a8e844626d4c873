using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir;

/// <summary>
/// The light that the plan gives a room, in a <c>light</c> statement or in the room itself: the brightest of several; where it says lamps
/// only, what they give.
/// </summary>
/// <param name="SaidAt">Where the plan says it.</param>
public sealed record RoomLight(Room Room, Figure Level, SourceSpan SaidAt)
{
    private static readonly Source Own = new("the brightest level that the plan gives the room", Origin.OwnAssumption);

    /// <summary>By the id of the room; rooms whose light the plan does not say are left out.</summary>
    public static IReadOnlyDictionary<string, RoomLight> Of(PlanFacts facts)
    {
        var lit = new Dictionary<string, RoomLight>(Said(facts.Plan), StringComparer.Ordinal);
        foreach (var lamps in facts.Lamps.Values.Where(l => l.Asked is null))
        {
            lit.TryAdd(lamps.Room.Id, new RoomLight(lamps.Room, lamps.Reached, lamps.Room.Span));
        }

        return lit;
    }

    /// <summary>Of those rooms that say a level.</summary>
    internal static IReadOnlyDictionary<string, RoomLight> Said(Plan plan)
    {
        var lamps = plan.Services.OfType<Light>().Where(s => s is { Room: not null, Amount: not null }).ToLookup(s => s.Room!.Id);
        var lit = new Dictionary<string, RoomLight>(StringComparer.Ordinal);
        foreach (var room in plan.Rooms)
        {
            var said = lamps[room.Id].Select(l => (Lux: l.Amount!.Value.Base, l.Span)).Concat(room.Lux is { } lux ? [(lux, room.Span)] : [])
                .ToList();
            if (said.Count > 0)
            {
                lit.TryAdd(room.Id, Of(room, said, plan.Units));
            }
        }

        return lit;
    }

    private static RoomLight Of(Room room, List<(double Lux, SourceSpan Span)> said, UnitSystem units)
    {
        var (level, span) = said.MaxBy(s => s.Lux);
        var figure = new Figure
        {
            Name = "light",
            Of = room.Id,
            Value = level,
            Kind = QuantityKind.Illuminance,
            Text = QuantityText.Of(level, Measure.Illuminance, units),
            Inputs = [.. said.Select(s => FigureInput.Said("light", QuantityText.Of(s.Lux, Measure.Illuminance, units), s.Span))],
            Formula = "light = the brightest said",
            Substituted = string.Join(", ", said.Select(s => QuantityText.Of(s.Lux, Measure.Illuminance, units))),
            Source = Own,
        };
        return new RoomLight(room, figure, span);
    }
}
