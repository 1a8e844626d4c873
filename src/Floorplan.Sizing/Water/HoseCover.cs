using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Space;
using Floorplan.Sizing.Working;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Water;

/// <summary>How far hoses reach over the floor, on the way that a person drags them round what stands there.</summary>
public sealed class HoseCover
{
    /// <summary>Corners of the free floor that are walked to; the farthest in a straight line first. Own choice.</summary>
    private const int MostWalks = 48;

    private static readonly Source Own = new("a hose lies along the way that a person walks with it", Origin.OwnAssumption);

    private readonly Dictionary<string, Figure?> whole = new(StringComparer.Ordinal);

    private HoseCover(IReadOnlyList<MissedFloor> missed) => Missed = missed;

    /// <summary>The farthest floor of each washed room, when the plan has hoses.</summary>
    public IReadOnlyList<MissedFloor> Missed { get; }

    public static HoseCover Of(PlanFacts facts)
    {
        List<Hose> hoses = [.. facts.Plan.Services.OfType<Hose>().Where(h => h is { Length: not null, Room: not null })];
        var cover =
            new HoseCover(hoses.Count == 0
                ? []
                : [.. facts.Plan.Rooms.Where(r => r.WashedDown).Select(r => Farthest(facts, r, hoses)).OfType<MissedFloor>()]);
        foreach (var hose in hoses)
        {
            cover.whole.TryAdd(hose.Id, OwnRoom(facts, hose));
        }

        return cover;
    }

    /// <summary>
    /// From a hose to the farthest floor of its room along the way, in mm, where a straight line would reach it; null where even that
    /// does not, so that the sheet draws where the hose ends.
    /// </summary>
    public Figure? FarthestOfRoom(Hose hose) => whole.GetValueOrDefault(hose.Id);

    /// <summary>
    /// The corner of the free floor that lies farthest past the end of the hose that comes nearest to it. Pockets that nobody can walk
    /// into, such as behind a tank, do not count where there is other floor.
    /// </summary>
    private static MissedFloor? Farthest(PlanFacts facts, Room room, IReadOnlyList<Hose> hoses)
    {
        var nearest = Corners(facts, room, c => hoses.Min(h => h.At.Coordinate.Distance(c) - Length(h)))
            .Select(at => (At: at, Hose: hoses.Select(h => (Hose: h, Way: Way(facts.Space, h, room,
                at))).MinBy(h => h.Way - Length(h.Hose))))
            .Select(n => (n.Hose.Hose, n.Hose.Way, n.At)).ToList();
        if (nearest.Count == 0)
        {
            return null;
        }

        var found = Walked(nearest, n => n.Way).MaxBy(n => n.Way - Length(n.Hose));
        double past = found.Way - Length(found.Hose);
        var units = facts.Plan.Units;
        return new MissedFloor(room, found.Hose, found.At, new Figure
        {
            Name = "floor past the end of the nearest hose",
            Of = room.Id,
            Value = past,
            Kind = QuantityKind.Length,
            Text = double.IsInfinity(past) ? "no way" : QuantityText.Distance(past, units),
            Inputs = [Said(found.Hose, units)],
            Formula = "way along the floor to its farthest corner - length of the hose",
            Substituted = $"{Text(found.Way, units)} - {Text(Length(found.Hose), units)}",
            Source = Own,
        });
    }

    private static Figure? OwnRoom(PlanFacts facts, Hose hose)
    {
        List<Coordinate> corners = [.. Corners(facts, hose.Room!, hose.At.Coordinate.Distance)];
        if (corners.Count == 0 || corners[0].Distance(hose.At.Coordinate) > Length(hose))
        {
            return null;
        }

        double way = Walked([.. corners.Select(c => Way(facts.Space, hose, hose.Room!, c))], w => w).Max();
        return new Figure
        {
            Name = "way from the hose to the farthest floor of its room",
            Of = hose.Id,
            Value = way,
            Kind = QuantityKind.Length,
            Text = Text(way, facts.Plan.Units),
            Inputs = [Said(hose, facts.Plan.Units)],
            Formula = "longest of the ways along the floor to its corners",
            Substituted = Text(way, facts.Plan.Units),
            Source = Own,
        };
    }

    /// <summary>The corners of the free floor, the farthest in a straight line first.</summary>
    private static IEnumerable<Coordinate> Corners(PlanFacts facts, Room room, Func<Coordinate, double> straight) =>
        facts.Space.FreeFloor(room, Mover.Person).Coordinates.Distinct()
            .OrderByDescending(straight).ThenBy(c => c.X).ThenBy(c => c.Y)
            .Take(MostWalks);

    /// <summary>Those with a way, or all where none has one.</summary>
    private static List<T> Walked<T>(List<T> all, Func<T, double> way)
        => all.Exists(a => double.IsFinite(way(a))) ? all.FindAll(a => double.IsFinite(way(a))) : all;

    /// <summary>Within the building; infinite when there is no way.</summary>
    private static double Way(FloorSpace space, Hose hose, Room room, Coordinate at) =>
        space.Find(hose.Room, hose.At.Coordinate, room, at, Mover.Person, o => o is { RoomA: not null, RoomB: not null })?.LengthMm
            ?? double.PositiveInfinity;

    private static double Length(Hose hose) => hose.Length!.Value.Millimetres;

    private static string Text(double mm, UnitSystem units) => double.IsInfinity(mm) ? "no way" : QuantityText.Distance(mm, units);

    private static FigureInput Said(Hose hose, UnitSystem units)
        => FigureInput.Said("hose " + hose.Id, Text(Length(hose), units), hose.Span);
}

/// <summary>The floor of a washed room that is hardest to reach with any hose.</summary>
/// <param name="Hose">The one that comes nearest to it.</param>
/// <param name="Past">How far the floor goes on past its end, in mm; below zero when the hose reaches it, infinite when there is no
/// way.</param>
public sealed record MissedFloor(Room Room, Hose Hose, Coordinate At, Figure Past);
