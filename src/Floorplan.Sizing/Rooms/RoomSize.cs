using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Rooms;

/// <summary>How large a room is between its finished faces.</summary>
/// <param name="Area">Of the floor, in m2.</param>
/// <param name="Volume">Up to the ceiling, in m3.</param>
/// <param name="Breathed">As air for people: counted no higher than <see cref="HighestCounted"/>.</param>
public sealed record RoomSize(Room Room, Figure Area, Figure Volume, Figure Breathed)
{
    /// <summary>Air above this does not count for the people below it, in mm.</summary>
    public const double HighestCounted = 3000;

    private static readonly Source Geometry = new("geometry of the room", Origin.CommonPractice);
    private static readonly Source Air = new(
        "UK approved code of practice L24, regulation 10: heights over 3 m are not counted", Origin.FoundInPublicCopy);

    /// <summary>By the id of the room.</summary>
    internal static IReadOnlyDictionary<string, RoomSize> Of(PlanFacts facts)
    {
        var sizes = new Dictionary<string, RoomSize>(StringComparer.Ordinal);
        foreach (var room in facts.Plan.Rooms)
        {
            sizes.TryAdd(room.Id, Of(room, facts.Plan.Units));
        }

        return sizes;
    }

    private static RoomSize Of(Room room, UnitSystem units)
    {
        var box = room.Floor.EnvelopeInternal;
        string floor = room.Floor.IsRectangle
            ? $"{WorkingText.Long(box.Width, units)} x {WorkingText.Long(box.Height, units)}"
            : FormattableString.Invariant($"outline of {room.Floor.ExteriorRing.NumPoints - 1} corners");
        string high = WorkingText.Long(room.CeilingHeight.Millimetres, units);
        var ceiling = FigureInput.Said("height of the ceiling", high, room.Span);
        var area = Make(
            room, "floor area", room.AreaSquareMetres, QuantityKind.Area, QuantityText.Of(room.AreaSquareMetres, Measure.Area, units),
            [FigureInput.Said("floor", floor, room.Span)], "length x width, or the outline's own area", floor, Geometry);
        double cubic = room.AreaSquareMetres * room.CeilingHeight.Metres;
        var volume = Make(
            room, "volume", cubic, QuantityKind.Volume, QuantityText.Of(cubic, Measure.Volume, units),
            [FigureInput.Of(area), ceiling], "floor area x height of the ceiling", $"{area.Text} x {high}", Geometry);
        double counted = room.AreaSquareMetres * Math.Min(room.CeilingHeight.Millimetres, HighestCounted) / 1000;
        string upTo = WorkingText.Long(HighestCounted, units);
        var breathed = Make(
            room, "volume for people", counted, QuantityKind.Volume, QuantityText.Of(counted, Measure.Volume, units),
            [FigureInput.Of(area), ceiling, FigureInput.Taken("highest that counts", upTo, Air)],
            "floor area x the lower of the ceiling and what counts",
            $"{area.Text} x {(room.CeilingHeight.Millimetres < HighestCounted ? high : upTo)}", Air);
        return new RoomSize(room, area, volume, breathed);
    }

    private static Figure Make(
        Room room, string name, double value, QuantityKind kind, string text, IReadOnlyList<FigureInput> inputs,
        string formula, string substituted, Source source) => new()
        {
            Name = name,
            Of = room.Id,
            Value = value,
            Kind = kind,
            Text = text,
            Inputs = inputs,
            Formula = formula,
            Substituted = substituted,
            Source = source,
        };
}
