using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>The height of the hands at every standing place against the range of standing work.</summary>
internal sealed class BenchHeight : Rule
{
    private const string Lowest = "lowest height of the hands";
    private const string Highest = "greatest height of the hands";

    /// <summary>28 in, heavy work; and 43 in, precise work: the ends of the three ranges of NIOSH 97-117.</summary>
    private const double Heavy = 711.2;
    private const double Precise = 1092.2;

    public override string Name => "bench-height";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says => "Hands work lower or higher than standing work of any kind is done.";

    public override string Why => "Too low bends the back all day, too high lifts the shoulders. Heavy work wants 28 to 35 in, light work 34 to 37 in, precise work 37 to 43 in.";

    public override string Mend => "Change the height, put low people on a platform, or say where the hands are with `work height` when that is not the top.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("NIOSH 97-117, Elements of Ergonomics Programs, trays 6 to 8: heavy 28 to 35 in, light 34 to 37 in, precise 37 to 43 in", Origin.FoundInPublicCopy),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Lowest, Heavy, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Highest, Precise, LimitUnit.Millimetres, Sources[0], Severity.Warning),
    ];

    public override string Bad => Unit(650);

    public override string Good => Unit(900);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var lowest = context.Limit(this, Lowest);
        var highest = context.Limit(this, Highest);
        foreach (var station in context.Plan.Stations.Where(s => s.Workers.Count > 0 && s.Work.Each is not null))
        {
            double hands = station.WorkHeight.Millimetres;
            if (lowest is not null && hands < lowest.Value - Tiers.Tolerance)
            {
                yield return Finding(context, station, hands, lowest, "low", $"raise it by {Say.SizeUp(lowest.Value - hands, context.Plan.Units)}");
            }
            else if (highest is not null && hands > highest.Value + Tiers.Tolerance)
            {
                yield return Finding(context, station, hands, highest, "high", $"lower it by {Say.SizeUp(hands - highest.Value, context.Plan.Units)}, or give the workers a platform");
            }
        }
    }

    private Finding Finding(CheckContext context, Station station, double hands, AppliedLimit limit, string how, string mend) => CheckContext.Find(
        this, limit, hands, [station.Id], $"hands at {Named.Of(station)} work {context.Text(hands)} above the floor, too {how} for standing work",
        $"{mend}; when the hands are elsewhere than the top, say so with `work height`", station.Span, station.Bounds.Centre.Coordinate);

    private static string Unit(int height) => FormattableString.Invariant($"""
        plan "A low bench"
          units metric
        shell shed 5000 x 3000 x 2600
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out
        station bench "Trim bench" in cut
          size   1800 x 600 x {height}
          place  against north wall, centred
          worker south
          work   30 s each
        """);
}
