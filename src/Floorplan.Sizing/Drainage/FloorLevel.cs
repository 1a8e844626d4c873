using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Sizing.Working;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Drainage;

/// <summary>How deep a place of a floor with falls lies.</summary>
/// <param name="Drain">The drain there; null at a corner and at the highest place.</param>
/// <param name="Level">In mm, zero or below, counted from the highest place of the room.</param>
public sealed record FloorLevel(Room Room, Coordinate At, Drain? Drain, Figure Level)
{
    private static readonly Source Own = new("arithmetic: level = slope x (run to the drain - longest run)", Origin.OwnAssumption);

    /// <summary>How far below the highest place of the floor, in mm; zero or more.</summary>
    public double Down => -Level.Value;

    /// <param name="number">Of the place in its room, from 0.</param>
    internal static FloorLevel Of(
        Room room, Falls falls, Coordinate at, Drain? drain, int number, IReadOnlyList<Drain> takes, Figure run, UnitSystem units)
    {
        double own = takes.Min(d => d.At.Coordinate.Distance(at));
        double mm = falls.Slope * Math.Min(0, own - run.Value);
        string slope = QuantityText.Of(falls.Slope, Measure.Ratio, units);
        return new FloorLevel(room, at, drain, new Figure
        {
            Name = drain is null
                ? FormattableString.Invariant($"level of the floor at place {number + 1}")
                : "level of the floor in " + room.Id,
            Of = drain?.Id ?? room.Id,
            Value = mm,
            Kind = QuantityKind.Length,
            Text = QuantityText.Level(Length.FromMillimetres(mm), units),
            Inputs = [FigureInput.Said("slope", slope, falls.Span), FigureInput.Of(run)],
            Formula = "level = slope x (run from there to its drain - longest run)",
            Substituted = $"{slope} x ({QuantityText.Distance(own, units)} - {run.Text})",
            Source = Own,
        });
    }
}
