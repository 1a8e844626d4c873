using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Washed floor that lies farther from every hose than the hose is long, on the way that a person drags it round what stands there.</summary>
internal sealed class HoseMissesFloor : Rule
{
    /// <summary>A jet cleans this far past the nozzle; own assumption, in mm.</summary>
    private const double Jet = 2000;

    /// <summary>Corners of the free floor that are walked to; the farthest in a straight line first. Own choice.</summary>
    private const int MostWalks = 48;

    public override string Name => "hose-misses-floor";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "A part of a washed floor is out of reach of every hose, measured along the floor round what stands on it. A plan without hoses is not looked at.";

    public override string Why => "What the jet does not reach is swept at best. Behind the last bench is where it starts to smell.";

    public override string Mend => "Take a longer hose, or hang another one on a water point nearer to the floor that is missed.";

    public override string? Caution => "Hot water scalds and hoses trip people: hang them up after use.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("9 CFR 354.224, US CFR, for rabbits; for other animals advice: hose points so that all parts of the floors can be cleaned", Origin.FoundInPublicCopy),
        new("a jet cleans 2 m past the nozzle", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new("washed floor past the end of a hose", Jet, LimitUnit.Millimetres, Sources[1], Severity.Warning)];

    public override string Bad => """
        plan "A hose at one end"
          units metric
        shell shed 12000 x 3000 x 2600
        room wash "Wash" dirty from west to east
        door d1 wash to outside, south wall, centred, 1000 x 2050, swings out, closes itself
        water w1 cold in wash, north wall, 500 from west, height 1200
        hose hz1 on w1, 5 m
        drain fd1 floor in wash, centred, 3000 from west, 100
        drain fd2 floor in wash, centred, 9000 from west, 100
        """;

    public override IReadOnlyList<LineChange> Mended => [new("hose hz1", "hose hz1 on w1, 10 m")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var hoses = context.Plan.Services.OfType<Hose>().Where(h => h is { Length: not null, Room: not null }).ToList();
        if (hoses.Count == 0 || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var room in context.Plan.Rooms.Where(r => r.WashedDown))
        {
            if (Farthest(context.Space, room, hoses) is { } far && far.Past > limit.Value + Tiers.Tolerance)
            {
                string length = context.Walk(far.Hose.Length!.Value.Millimetres);
                yield return CheckContext.Find(
                    this, limit, far.Past, [room.Id, far.Hose.Id],
                    double.IsInfinity(far.Past)
                        ? $"no hose reaches the floor of {Named.Of(room)}"
                        : $"the floor of {Named.Of(room)} goes on {context.Walk(far.Past)} past the end of the nearest hose, {far.Hose.Id} of {length}",
                    double.IsInfinity(far.Past)
                        ? $"add a hose on a water point in {Named.Of(room)}"
                        : $"take one {context.Walk(Math.Ceiling((far.Past - limit.Value) / 100) * 100)} longer, or add a hose near {Say.Place(far.At, context.Plan.Units)}",
                    far.Hose.Span, far.At);
            }
        }
    }

    /// <summary>The corner of the free floor that lies farthest past the end of the hose that comes nearest to it.</summary>
    private static (Hose Hose, double Past, Coordinate At)? Farthest(FloorSpace space, Room room, IReadOnlyList<Hose> hoses)
    {
        var corners = space.FreeFloor(room, Mover.Person).Coordinates.Distinct()
            .Select(c => (At: c, Past: hoses.Min(h => h.At.Coordinate.Distance(c) - h.Length!.Value.Millimetres)))
            .OrderByDescending(c => c.Past).ThenBy(c => c.At.X).ThenBy(c => c.At.Y)
            .Take(MostWalks);
        (Hose Hose, double Past, Coordinate At)? worst = null;
        foreach (var (at, _) in corners)
        {
            var nearest = hoses.Select(h => (Hose: h, Past: Past(space, h, room, at))).MinBy(h => h.Past);
            if (worst is null || nearest.Past > worst.Value.Past)
            {
                worst = (nearest.Hose, nearest.Past, at);
            }
        }

        return worst;
    }

    /// <summary>How far a place lies past the end of a hose, on the way there within the building; infinite when there is none.</summary>
    private static double Past(FloorSpace space, Hose hose, Room room, Coordinate at) =>
        (space.Find(hose.Room, hose.At.Coordinate, room, at, Mover.Person, o => o is { RoomA: not null, RoomB: not null })?.LengthMm ?? double.PositiveInfinity) - hose.Length!.Value.Millimetres;
}
