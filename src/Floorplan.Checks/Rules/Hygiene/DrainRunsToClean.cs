using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class DrainRunsToClean : Rule
{
    public override string Name => "drain-runs-to-clean";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "The floor of a dirty room, toilet or plant room falls to a drain in a cleaner room, or its drain runs on to one there.";

    public override string Why
        => "What was hosed off the dirty floor runs through the clean room, and when the line blocks it comes up there.";

    public override string Mend => "Lead water from clean to dirty: give the dirty room its own drain, last on the line.";

    public override string? Caution => "Drains are a licensed plumber's work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "South Africa, Poultry Regulations 2006, reg 11(c)(ii): channels fall from clean to dirty",
            Origin.FoundInPublicCopy, Force.Law),
        new Source(
            "Malaysia, veterinary code of practice for poultry plants 2017, 2.10.12: drains flow from clean to dirty",
            Origin.FoundInPublicCopy, Force.Guidance).In("my").For(Trade.Poultry),
        HygieneSources.Ranks,
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("toilet-drain-joins")];

    public override string Bad => """
        plan "Carp unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut  "Gutting" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, centred, 100
        drain fd2 floor in pack, centred, 100
        falls gut 2 % to fd2
        falls pack 2 % to fd2
        """;

    public override IReadOnlyList<LineChange> Mended => [new("falls gut", "falls gut 2 % to fd1")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var drains = context.Plan.Services.OfType<Drain>().DistinctBy(d => d.Id).ToDictionary(d => d.Id, StringComparer.Ordinal);
        foreach (var room in context.Plan.Rooms)
        {
            if (room.Falls is { DrainId: { } id } falls && drains.TryGetValue(id, out var drain) && RunsToClean(room, drain.Room))
            {
                yield return Found(room, drain, "the floor of "
                    + Said(room), "falls", $"falls {room.Id} … to a drain of its own", falls.Span);
            }
        }

        foreach (var from in drains.Values)
        {
            if (from.RunsToId is { } id && drains.TryGetValue(id, out var to) && RunsToClean(from.Room, to.Room))
            {
                yield return Found(
                    from.Room!, to, $"drain {from.Id} in {Said(from.Room!)}", "runs on",
                    "turn the line round, so that the dirty room's drain is the last on it", from.Span) with
                { Things = [from.Id, to.Id] };
            }
        }
    }

    private Finding Found(Room room, Drain drain, string what, string how, string mend, SourceSpan span) => CheckContext.Find(
        this, Severity.Warning, [room.Id, drain.Id], $"{what} {how} to {drain.Id} in {Said(drain.Room!)}", mend, span, drain.At.Coordinate);

    private static bool RunsToClean(Room? from, Room? to)
        => from is not null && to is not null && HygieneRank.Of(from) == 0 && HygieneRank.Of(to) > 0;

    private static string Said(Room room) => $"{Named.Of(room)}, {room.Class.ToString().ToLowerInvariant()},";
}
