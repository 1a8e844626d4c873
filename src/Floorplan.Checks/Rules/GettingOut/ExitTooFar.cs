using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>
/// The real walk from the farthest standing place of each room to the nearest exit. Exits count that can be reached without going
/// outside. The longest of the plan is told.
/// </summary>
internal sealed class ExitTooFar : Rule
{
    private const string Only = "walk to the only exit";
    private const string ShortOnly = "short walk to the only exit";
    private const string Nearest = "walk to the nearest of several exits";

    /// <summary>100 ft for at most 30 people of group B, which small food works are; 75 ft for more.</summary>
    private const double SmallCrew = 30_480;

    /// <inheritdoc cref="SmallCrew"/>
    private const double LargeCrew = 22_860;
    private const int Few = 30;

    /// <summary>100 sq ft of floor for each person, IBC Table 1004.5.</summary>
    private const double SquareMetresEach = 100 * InchPound.SquareMetresPerSquareFoot;

    public override string Name => "exit-too-far";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "The walk from some place in a room to the way out is too long.";

    public override string Why
        => "Smoke, ammonia or a burst steam line leaves seconds. Where there is only one way to go, it has to be short.";

    public override string Mend => "Add an exit at the far end, or clear a straighter way.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("IBC 2018, 1006.2.1, group B, as adopted in Minnesota: common path of 75 ft without sprinklers, 100 ft for at most 30 "
            + "people", Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
        new Source("IBC 2018, Table 1017.2, as adopted in Minnesota: 200 ft in groups B and F-1 without sprinklers",
            Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
        new Source(
            "NFPA 101, 2021, Table 40.2.5: common path of 50 ft in general industrial use without sprinklers", Origin.FromMemoryToVerify,
            Force.ModelCode).In("us"),
        new Source("ASR A2.3, Germany, 2022: 35 m as the crow flies, walked no more than 1.5 times that; 25 m at raised risk of fire",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("de"),
        new Source("fire safety risk assessment guide, UK, offices and shops: walked 18 m where there is one way, 45 m where there are two",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("uk"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Only, SmallCrew, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Only, 52_500, LimitUnit.Millimetres, Sources[3], Severity.Note),
        new(Only, 18_000, LimitUnit.Millimetres, Sources[4], Severity.Note),
        new(ShortOnly, 15_240, LimitUnit.Millimetres, Sources[2], Severity.Note),
        new(Nearest, 60_960, LimitUnit.Millimetres, Sources[1], Severity.Warning),
        new(Nearest, 52_500, LimitUnit.Millimetres, Sources[3], Severity.Note),
        new(Nearest, 45_000, LimitUnit.Millimetres, Sources[4], Severity.Note),
    ];

    public override string Bad => """
        plan "A very long shed"
          units metric
          code us
        shell shed 34000 x 4000 x 2800
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, centred, 900 x 2050, swings out, closes itself
        station bench "Packing bench" in pack
          size 1800 x 700 x 900
          place against north wall, centred
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("door d1", "door d2 pack to outside, east wall, centred, 900 x 2050, swings out, closes itself"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var worst = JoinedRooms.Of(context.Plan)
            .Select(joined => (One: joined.Exits.Count == 1, People: People(context, joined), Longest: Longest(context, joined)))
            .Where(g => g.Longest is not null)
            .Select(g => (g.One, g.People, Longest: g.Longest!.Value, Limit: Tiers.Above(Holding(context, g.One, g.People),
                g.Longest.Value.Walk)))
            .Where(g => g.Limit is not null)
            .OrderByDescending(g => g.Longest.Walk - g.Limit!.Value)
            .FirstOrDefault();
        if (worst.Limit is { } limit)
        {
            var (room, way, walk) = worst.Longest;
            yield return CheckContext.Find(
                this, limit, walk, [room.Id],
                $"the way out from the far end of {Named.Of(room)} is {context.Walk(walk)}{(worst.One ? ", and there is only one" : "")}",
                $"add an exit nearer to it: the way is {context.Walk(walk - limit.Value)} too long", room.Span,
                way.Path.StartPoint.Coordinate);
        }
    }

    /// <summary>Of rooms that share their exits; null where no way leads out.</summary>
    private static (Room Room, Route Way, double Walk)? Longest(CheckContext context, JoinedRooms joined)
    {
        var ways = joined.Rooms.Select(r => (Room: r, Way: context.Space.FarthestExit(r, Mover.Person, Exits.IsExit)))
            .Where(p => p.Way is not null)
            .Select(p => (p.Room, Way: p.Way!, Walk: ToTheDoor(context, p.Way!)))
            .ToList();
        return ways.Count == 0 ? null : ways.MaxBy(p => p.Walk);
    }

    /// <summary>A figure that the plan sets holds however many exits there are.</summary>
    private IEnumerable<AppliedLimit> Holding(CheckContext context, bool one, int people) => Tiers.Holding(context, this)
        .Where(l => l.SetBy is not null || (l.Published.Key == Nearest) != one)
        .Select(l => l is { SetBy: null, Value: SmallCrew } && people > Few
            ? l with { Value = LargeCrew, Text = $"limit {context.Walk(LargeCrew)} ({l.Published.Source.Text})" }
            : l);

    private static int People(CheckContext context, JoinedRooms joined) => Math.Max(
        context.Facts.Crew.In(joined.Rooms),
        (int)Math.Ceiling((joined.Rooms.Sum(r => context.Facts.RoomSizes[r.Id].Area.Value) / SquareMetresEach) - 1e-6));

    /// <summary>The way ends at the outer face of the exit, not at the step outside that routes lead to.</summary>
    private static double ToTheDoor(CheckContext context, Route way) => Overlays.Stretches(way.Path, context.Plan.Shell.Outside).Length;
}
