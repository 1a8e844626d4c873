using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>The height of the hands at every standing place against the range of standing work.</summary>
internal sealed class BenchHeight : Rule
{
    private const string Lowest = "lowest height of the hands";
    private const string Highest = "greatest height of the hands";

    /// <summary>28 in, heavy work; and 43 in, precise work: the ends of the three ranges of NIOSH 97-117.</summary>
    private const double LowestHeavy = 711.2;
    private const double HighestPrecise = 1092.2;

    /// <summary>35 in; 34 in; 37 in; 37 in: where the ranges end between those.</summary>
    private const double HighestHeavy = 889;
    private const double LowestLight = 863.6;
    private const double HighestLight = 939.8;
    private const double LowestPrecise = 939.8;

    /// <summary>Meat was cut best 17 to 22 cm below the elbow.</summary>
    private static readonly BodySize LowestCutting = BodySize.Smallest(BodyMeasure.ElbowHeight) with { Middling = true, Plus = -220 };
    private static readonly BodySize HighestCutting = BodySize.Largest(BodyMeasure.ElbowHeight) with { Middling = true, Plus = -170 };

    public override string Name => "bench-height";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says
        => "Hands work lower or higher than the standing work there is done; where the plan says no kind of work, than any standing work "
            + "is done.";

    public override string Why
        => "Too low bends the back all day, too high lifts the shoulders. Heavy work wants 28 to 35 in, light work 34 to 37 in, precise "
            + "work 37 to 43 in; butchers cut best 17 to 22 cm below the elbow, where the arm can push the knife.";

    public override string Mend
        => "Change the height, put low people on a platform, or say where the hands are with `work height` when that is not the top.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "NIOSH 97-117, Elements of Ergonomics Programs, trays 6 to 8: heavy 28 to 35 in, light 34 to 37 in, precise 37 to 43 in",
            Origin.FoundInPublicCopy, Force.Measured),
        new("Magnusson and Ortengren, Applied Ergonomics 18(2), 1987: meat cut 17 to 22 cm below the elbow; with the elbow of the middle "
            + "woman and man of ANSUR II, worked out", Origin.FoundInPublicCopy, Force.Measured),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Lowest, LowestHeavy, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Highest, HighestPrecise, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Of(Lowest, WorkKind.Precise), LowestPrecise, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Of(Lowest, WorkKind.Light), LowestLight, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Of(Highest, WorkKind.Light), HighestLight, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Of(Highest, WorkKind.Heavy), HighestHeavy, LimitUnit.Millimetres, Sources[0], Severity.Note),
        RuleLimit.OfBody(Of(Lowest, WorkKind.Cutting), LowestCutting, Sources[1], Severity.Note),
        RuleLimit.OfBody(Of(Highest, WorkKind.Cutting), HighestCutting, Sources[1], Severity.Note),
    ];

    public override string Bad => """
        plan "A low bench"
          units metric
        shell shed 5000 x 3000 x 2600
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        drain fd1 floor in cut, 2500 from west, centred, 100
        sink s1 hand in cut, 400 x 350, against east wall, 1200 from south
        station bench "Trim bench" in cut
          size   1800 x 600 x 650
          place  against north wall, centred
          worker south
          work   30 s each
        """;

    public override IReadOnlyList<LineChange> Mended => [new("size   1800", "  size   1800 x 600 x 900")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var station in context.Plan.Stations.Where(s => s.Workers.Count > 0 && (s.WorkEach is not null || s.WorkKind is not null)))
        {
            double hands = station.WorkHeight.Millimetres;
            if (Tiers.Below(Holding(context, Lowest, station.WorkKind), hands) is { } lowest)
            {
                yield return Finding(
                    context, station, hands, lowest, "low", $"raise it by {Say.SizeUp(lowest.Value - hands, context.Plan.Units)}");
            }
            else if (Tiers.Above(Holding(context, Highest, station.WorkKind), hands) is { } highest)
            {
                yield return Finding(
                    context, station, hands, highest, "high",
                    $"lower it by {Say.SizeUp(hands - highest.Value, context.Plan.Units)}, or give the workers a platform");
            }
        }
    }

    /// <summary>What holds for any work, and what for this kind; only the plan's own figure where it sets one.</summary>
    private IEnumerable<AppliedLimit> Holding(CheckContext context, string key, WorkKind? kind)
    {
        if (context.Limit(this, key) is { } any)
        {
            yield return any;
            if (any.SetBy is not null)
            {
                yield break;
            }
        }

        if (kind is { } said && Limits.Any(l => l.Key == Of(key, said)) && context.Limit(this, Of(key, said)) is { } ofKind)
        {
            yield return ofKind;
        }
    }

    private static string Of(string key, WorkKind kind) => $"{key}, {Word(kind)}";

    private static string Word(WorkKind? kind) => kind switch
    {
        WorkKind.Precise => "precise work",
        WorkKind.Light => "light work",
        WorkKind.Heavy => "heavy work",
        WorkKind.Cutting => "cutting meat",
        _ => "standing work",
    };

    private Finding Finding(CheckContext context, Station station, double hands, AppliedLimit limit, string how, string mend)
        => CheckContext.Find(
        this, limit, hands, [station.Id],
        $"hands at {Named.Of(station)} work {context.Text(hands)} above the floor, too {how} for {Word(station.WorkKind)}",
        $"{mend}; when the hands are elsewhere than the top, say so with `work height`", station.Span, station.Bounds.Centre.Coordinate);
}
