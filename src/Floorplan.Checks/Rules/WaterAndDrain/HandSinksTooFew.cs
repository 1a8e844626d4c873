using System.Globalization;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Rules.Hygiene;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>A plan without any hand sink is told of by hand-sink-missing, and by unwashed-entry.</summary>
internal sealed class HandSinksTooFew : Rule
{
    public override string Name => "hand-sinks-too-few";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The crew that the plan counts is more than its hand sinks serve.";

    public override string Why => "At the start and after each break all wash at once. Whoever has to queue goes in without.";

    public override string Mend => "Add a hand sink where the crew comes in, or write `hand` at a sink that is kept for hands.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "Malaysian code of practice for poultry (MY COVP 2017), 5.12: a hand sink for each 10 workers, at doors and main stations",
            Origin.FoundInPublicCopy, Force.Guidance).In("my").For(Trade.Poultry),
        Welfare.ApprovedCode,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new("people to a hand sink", 10, LimitUnit.Count, Sources[0], Severity.Note) { Quoted = true },
        new("people to a hand sink", Welfare.UpTo[0], LimitUnit.Count, Sources[1], Severity.Note),
    ];

    public override string Bad => """
        plan "Pack hall"
          units metric
          country my
          trade poultry
        shell shed 20000 x 8000 x 3000
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 500 from west, 1000 x 2050, swings out, closes itself, opens from inside
        sink s1 hand in pack, 400 x 350, against north wall, 1000 from west
        day
          crew pack 14
          elsewhere 2 toilets, changing room
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("sink s1", "sink s2 hand in pack, 400 x 350, against north wall, 3000 from west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        int people = (int)context.Facts.Crew.All.Value;
        var sinks = context.Plan.Stations.Where(s => s.IsHandSink).ToList();
        if (sinks.Count == 0 || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        double each = people / (double)sinks.Count;
        bool byTable = limit.SetBy is null && limit.Published.Source == Welfare.ApprovedCode;
        int needed = byTable ? Welfare.Needed(people) : (int)Math.Ceiling(people / limit.Value);
        if (sinks.Count < needed)
        {
            int more = needed - sinks.Count;
            yield return CheckContext.Find(
                this, limit, each, [.. sinks.Select(s => s.Id)],
                $"the crew of {people} has {FindingCounts.Words(sinks.Count, "hand sink")}, "
                    + $"{each.ToString("0.#", CultureInfo.InvariantCulture)} people to each",
                $"add {FindingCounts.Words(more, "hand sink")} where the crew comes in", context.Plan.Day!.Span)
                with
            {
                Figures = [context.Facts.Crew.All],
                Measured = byTable ? people : each,
                LimitValue = byTable ? Welfare.ServedBy(sinks.Count) : limit.Value,
                Limit = byTable ? $"{needed} basins for {people} people ({Welfare.ApprovedCode.Text})" : limit.Text,
            };
        }
    }
}
