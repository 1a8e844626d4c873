using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>Measures from the middle of one worker to the middle of the next along a bench or rail.</summary>
internal sealed class ElbowRoom : Rule
{
    public override string Name => "elbow-room";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says => "Two people side by side at a bench or rail have less width each than their elbows take.";

    public override string Why =>
        "Knives are in hand. People who touch elbows cut each other, twist to make room and slow down. A broad man is 667 mm from "
            + "forearm to forearm, so places closer than that cannot both be filled by broad men.";

    public override string Mend
        => "Set the places farther apart, lengthen the bench, put somebody on the other side, or plan one person fewer.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        Published.AnsurTwo,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        RuleLimit.OfBody("width for each worker", BodySize.Largest(BodyMeasure.ElbowToElbow), Sources[0], Severity.Warning),
    ];

    public override string Caution => "Blades: people who work with knives need room to work and to step back.";

    public override string Bad => """
        plan "Two at a short bench"
          units metric

        shell container 20 ft high-cube
          lining walls 60, ceiling 60, floor 40
          doors  west

        room work "Cutting room" clean from west to east

        door d1 work to outside, south wall, 300 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in work, 4000 from west, centred, 100
        sink s1 hand in work, 400 x 350, against south wall, 3200 from west

        station bench "Trim bench" in work
          size    1200 x 600 x 900
          place   against north wall, 1500 from west
          workers 2 south, 600 apart
          work    30 s each
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("size    1200", "  size    1400 x 600 x 900"),
        new("workers 2", "  workers 2 south, 700 apart"),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.Misplaced("outside-shell", "overlap")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        double widest = Tiers.Holding(context, this).Select(l => l.Value).DefaultIfEmpty(0).Max();
        var tightest = new Dictionary<(string, string), Pair>();
        foreach (var row in Rows(context.Plan))
        {
            foreach (var pair in Neighbours(row, widest))
            {
                var key = (pair.First.Station.Id, pair.Second.Station.Id);
                if (!tightest.TryGetValue(key, out var known) || pair.Apart < known.Apart)
                {
                    tightest[key] = pair;
                }
            }
        }

        foreach (var pair in tightest.Values)
        {
            if (Tiers.Below(context, this, pair.Apart) is { } limit)
            {
                yield return Report(context, pair, limit);
            }
        }
    }

    private Finding Report(CheckContext context, Pair pair, AppliedLimit limit)
    {
        var (a, b) = (pair.First.Station, pair.Second.Station);
        bool one = a.Id == b.Id;
        string who = one
            ? FormattableString.Invariant($"workers {pair.First.Worker.Number} and {pair.Second.Worker.Number} at {Named.Of(a)} have")
            : $"the workers at {Named.Of(a)} and {Named.Of(b)} have";
        string more = Say.SizeUp(limit.Value - pair.Apart, context.Plan.Units);
        int there = a.Workers.Count(w => w.Stands == pair.First.Worker.Stands);
        string mend = one
            ? $"set the places at {Named.Of(a)} {more} farther apart, which takes a bench {context.Text(limit.Value * there)} long for "
                + $"{there} people on one side, or put one of them on the other side"
            : $"move {Named.Of(b)} {more} away from {Named.Of(a)}, or the worker's place along it";
        var middle = pair.First.Worker.Centre.Coordinate;
        var other = pair.Second.Worker.Centre.Coordinate;
        return CheckContext.Find(
            this,
            limit,
            pair.Apart,
            one ? [a.Id] : [a.Id, b.Id],
            $"{who} {context.Text(pair.Apart)} of width each",
            mend,
            b.Span,
            new((middle.X + other.X) / 2, (middle.Y + other.Y) / 2));
    }

    /// <summary>People of one room who face the same way, from one end to the other.</summary>
    private static IEnumerable<List<Standing>> Rows(Plan plan) => plan.Stations
        .SelectMany(s => s.Workers.Select(w => new Standing(s, w)))
        .GroupBy(p => (p.Station.Room.Id, p.Worker.Stands))
        .Select(g => g.OrderBy(p => p.Along).ThenBy(p => p.Across).ToList());

    private static IEnumerable<Pair> Neighbours(List<Standing> row, double upTo)
    {
        for (int i = 0; i < row.Count; i++)
        {
            for (int j = i + 1; j < row.Count && row[j].Along - row[i].Along < upTo; j++)
            {
                // Farther apart than a body is deep: they stand in two rows, not side by side.
                if (Math.Abs(row[j].Across - row[i].Across) < WorkerSize.Depth.Millimetres)
                {
                    yield return new Pair(row[i], row[j], row[i].Worker.Centre.Coordinate.Distance(row[j].Worker.Centre.Coordinate));
                    break;
                }
            }
        }
    }

    private sealed record Standing(Station Station, WorkerPlace Worker)
    {
        public double Along => (Worker.Stands is Side.North or Side.South ? Worker.Centre.X : Worker.Centre.Y).Millimetres;

        public double Across => (Worker.Stands is Side.North or Side.South ? Worker.Centre.Y : Worker.Centre.X).Millimetres;
    }

    private sealed record Pair(Standing First, Standing Second, double Apart);
}
