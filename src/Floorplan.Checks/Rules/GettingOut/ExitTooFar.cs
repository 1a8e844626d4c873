using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Space;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>The real walk from the farthest standing place of each room to the nearest exit. The longest of the plan is told.</summary>
public sealed class ExitTooFar : Rule
{
    private const string Only = "walk to the only exit";
    private const string Nearest = "walk to the nearest of several exits";

    public override string Name => "exit-too-far";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "The walk from some place in a room to the way out is too long.";

    public override string Why => "Smoke, ammonia or a burst steam line leaves seconds. Where there is only one way to go, it has to be short.";

    public override string Mend => "Add an exit at the far end, or clear a straighter way.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("IBC 2021, 1006.2.1: common path of 75 ft in group B or F without sprinklers", Origin.FromMemory, Force.ModelCode),
        new("IBC 2021, Table 1017.2: 200 ft in group F-1 without sprinklers", Origin.FoundInPublicCopy, Force.ModelCode),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Only, 22_860, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Nearest, 60_960, LimitUnit.Millimetres, Sources[1], Severity.Warning),
    ];

    public override string Bad => Shed("");

    public override string Good => Shed("door d2 pack to outside, east wall, centred, 900 x 2050, swings out");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        bool one = context.Plan.Openings.Count(Exits.IsExit) == 1;
        if (context.Limit(this, one ? Only : Nearest) is not { } limit)
        {
            yield break;
        }

        var longest = context.Plan.Rooms
            .Select(r => (Room: r, Way: context.Space.FarthestExit(r, Mover.Person, Exits.IsExit)))
            .Where(p => p.Way is not null)
            .OrderByDescending(p => p.Way!.LengthMm)
            .FirstOrDefault();
        if (longest.Way is { } way && way.LengthMm > limit.Value + Tiers.Tolerance)
        {
            yield return CheckContext.Find(
                this, limit, way.LengthMm, [longest.Room.Id], $"the way out from the far end of {Named.Of(longest.Room)} is {context.Walk(way.LengthMm)}{(one ? ", and there is only one" : "")}",
                $"add an exit nearer to it: the way is {context.Walk(way.LengthMm - limit.Value)} too long", longest.Room.Span, way.Path.StartPoint.Coordinate);
        }
    }

    private static string Shed(string door) => $"""
        plan "A very long shed"
          units metric
          code us
        shell shed 26000 x 4000 x 2800
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, centred, 900 x 2050, swings out
        {door}
        station bench "Packing bench" in pack
          size 1800 x 700 x 900
          place against north wall, centred
        """;
}
