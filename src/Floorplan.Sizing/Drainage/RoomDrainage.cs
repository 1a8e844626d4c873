using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Space;
using Floorplan.Sizing.Working;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Drainage;

/// <summary>
/// Where the water on a room's floor runs: to the drain that its falls name, else to the nearest drain of the room. With falls, how far
/// they rise and how deep the floor lies at each drain and corner.
/// </summary>
/// <param name="Drains">All drains of the room, and the one that its falls name.</param>
/// <param name="Takes">Those that the floor runs to.</param>
/// <param name="Farthest">The place of the floor whose water runs farthest; the floor is highest there.</param>
/// <param name="Run">From there to the drain, straight on plan, in mm.</param>
/// <param name="Rise">Slope times run, in mm; null for a room without falls.</param>
/// <param name="Levels">Of the corners, the highest place and the drains; empty for a room without falls.</param>
public sealed record RoomDrainage(
    Room Room, IReadOnlyList<Drain> Drains, IReadOnlyList<Drain> Takes, Coordinate Farthest, Figure Run, Figure? Rise,
    IReadOnlyList<FloorLevel> Levels)
{
    private static readonly Source Own = new("arithmetic: rise = slope x run", Origin.OwnAssumption);

    /// <summary>What of the floor runs to each drain that takes any, in m2; the most first.</summary>
    public IEnumerable<(Drain Drain, double SquareMetres)> Shares =>
        FarthestFloor.Nearest(Room.Floor, [.. Takes.Select(d => d.At.Coordinate)])
            .Select(c => (Drain: Nearest(Takes, c.Site), SquareMetres: c.Part.Area / 1e6))
            .OrderByDescending(c => c.SquareMetres);

    /// <summary>By the id of the room; rooms whose floor runs to no drain are left out.</summary>
    public static IReadOnlyDictionary<string, RoomDrainage> Of(PlanFacts facts)
    {
        var drains = facts.Plan.Services.OfType<Drain>().ToList();
        var byRoom = drains.ToLookup(d => d.Room?.Id);
        var found = new Dictionary<string, RoomDrainage>(StringComparer.Ordinal);
        foreach (var room in facts.Plan.Rooms.Where(r => !r.Floor.IsEmpty))
        {
            var named = room.Falls is { DrainId: { } id } ? drains.Find(d => d.Id == id) : null;
            var own = byRoom[room.Id].ToList();
            if (named is not null && !own.Contains(named))
            {
                own.Add(named);
            }

            if (own.Count > 0)
            {
                found.TryAdd(room.Id, Of(room, own, named is null ? own : [named], facts.Plan.Units));
            }
        }

        return found;
    }

    private static RoomDrainage Of(Room room, IReadOnlyList<Drain> drains, IReadOnlyList<Drain> takes, UnitSystem units)
    {
        var (at, mm) = FarthestFloor.From(room.Floor, [.. takes.Select(d => d.At.Coordinate)]);
        var run = new Figure
        {
            Name = "longest run to the drain",
            Of = room.Id,
            Value = mm,
            Kind = QuantityKind.Length,
            Text = QuantityText.Distance(mm, units),
            Inputs =
                [
                    .. takes.Select(d => FigureInput.Said("drain " + d.Id, Place(d, units), d.Span)),
                    FigureInput.Said("floor", room.Label, room.Span)],
            Formula = "straight on plan from the farthest floor to the nearest drain that it runs to",
            Substituted = $"from {Place(at, units)} to {Nearest(takes, at).Id}",
            Source = Own,
        };
        if (room.Falls is not { } falls)
        {
            return new RoomDrainage(room, drains, takes, at, run, null, []);
        }

        var rise = RiseOf(room, falls, run, units);
        var levels = Places(room, drains, at).Select((p, i) => FloorLevel.Of(room, falls, p.At, p.Drain, i, takes, run, units));
        return new RoomDrainage(room, drains, takes, at, run, rise, [.. levels]);
    }

    private static Figure RiseOf(Room room, Falls falls, Figure run, UnitSystem units)
    {
        double mm = falls.Slope * run.Value;
        string slope = QuantityText.Of(falls.Slope, Measure.Ratio, units);
        return new Figure
        {
            Name = "rise of the falls",
            Of = room.Id,
            Value = mm,
            Kind = QuantityKind.Length,
            Text = QuantityText.Length(Length.FromMillimetres(Math.Round(mm)), units),
            Inputs = [FigureInput.Said("slope", slope, falls.Span), FigureInput.Of(run)],
            Formula = "rise = slope x longest run",
            Substituted = $"{slope} x {run.Text}",
            Source = Own,
        };
    }

    /// <summary>The corners, the highest place where that is no corner, and the drains.</summary>
    private static IEnumerable<(Coordinate At, Drain? Drain)> Places(Room room, IReadOnlyList<Drain> drains, Coordinate highest)
    {
        var corners = room.Floor.ExteriorRing.Coordinates.Skip(1).ToList();
        return corners.Concat(corners.Exists(c => c.Equals2D(highest, SamePlace)) ? [] : [highest])
            .Select(c => (c, (Drain?)null))
            .Concat(drains.Select(d => (d.At.Coordinate, (Drain?)d)));
    }

    /// <summary>In mm; a rounding of the geometry.</summary>
    private const double SamePlace = 0.5;

    /// <summary>Distances that are measured in the time of one step. Own estimate.</summary>
    private const int DistancesInStep = 4;

    private static Drain Nearest(IReadOnlyList<Drain> drains, Coordinate at)
    {
        Steps.Beside(1 + (drains.Count / DistancesInStep));
        return drains.MinBy(d => d.At.Coordinate.Distance(at))!;
    }

    private static string Place(Drain drain, UnitSystem units) => Place(drain.At.Coordinate, units);

    private static string Place(Coordinate at, UnitSystem units) => string.Create(
        CultureInfo.InvariantCulture,
        $"{QuantityText.Bare(Length.FromMillimetres(Math.Round(at.X)), units)}, "
            + $"{QuantityText.Bare(Length.FromMillimetres(Math.Round(at.Y)), units)}");
}
