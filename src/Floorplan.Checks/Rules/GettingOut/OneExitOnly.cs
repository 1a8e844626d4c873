using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>
/// The people whom one exit must serve: the crew that the plan gives, or as many as the floor counts for, whichever is more.
/// </summary>
internal sealed class OneExitOnly : Rule
{
    /// <summary>100 sq ft.</summary>
    private const double SquareMetresEach = 100 * InchPound.SquareMetresPerSquareFoot;

    public override string Name => "one-exit-only";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "Rooms with many people, or with much floor, have a single way out.";

    public override string Why
        => "The one door may be where the fire, the leak or the fallen rack is. A few people in a small box can all get past in time; "
            + "many cannot.";

    public override string Mend => "Add a second exit far from the first, so that one thing cannot block both.";

    public override string? Caution
        => "Whether one exit is enough is for the local authority to say: confirm it before anybody works in the unit.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("IBC 2018, 1006.2.1, as adopted in Minnesota: one exit for at most 49 people in group B or F",
            Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
        new Source("IBC 2018, Table 1004.5: one person for each 100 sq ft of industrial floor", Origin.FoundInSecondaryCopy,
            Force.ModelCode).In("us"),
        new Source(
            "29 CFR 1910.36(b), US CFR: two exit routes, or one where all can leave safely; it gives no number", Origin.FoundInPublicCopy,
            Force.Law).In("us"),
        new Source("Approved Document B, volume 2, England: one exit for at most 60 people", Origin.FromMemory, Force.Guidance).In("uk"),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        =>
        [
            new("people that one exit may serve", 49, LimitUnit.Count, Sources[0], Severity.Warning),
            new("people that one exit may serve", 60, LimitUnit.Count, Sources[3], Severity.Note),
        ];

    public override string Bad => """
        plan "A large packing shed"
          units metric
          code us
        shell shed 20 m x 11 m x 3 m
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, centred, 1200 x 2050, swings out, closes itself, opens from inside
        day
          crew pack 52
          elsewhere 3 toilets, changing room
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After(
            "door d1",
            "door d2 pack to outside, north wall, centred, 900 x 2050, swings out, closes itself, opens from inside"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var joined in JoinedRooms.Of(context.Plan).Where(j => j.Exits.Count == 1))
        {
            var exit = joined.Exits[0];
            double area = joined.Rooms.Sum(r => context.Facts.RoomSizes[r.Id].Area.Value);
            int byFloor = (int)Math.Ceiling((area / SquareMetresEach) - 1e-6);
            int crew = context.Facts.Crew.In(joined.Rooms);

            // Floor counts for people by the American table alone.
            int people = limit.SetBy is null && limit.Published.Source != Sources[0] ? crew : Math.Max(byFloor, crew);
            if (people > limit.Value)
            {
                string counted = crew >= byFloor
                    ? $"a crew of {crew}"
                    : $"{byFloor} people, as the floor of {context.Area(area)} counts for";
                yield return CheckContext.Find(
                    this, limit, people, [exit.Id], $"{Named.Of(exit)} is the only way out for {counted}",
                    $"add an exit far from {Named.Of(exit)}, or agree the number of people with the local authority and write it as a "
                        + "`limit`",
                    exit.Span, exit.Centre.Coordinate);
            }
        }
    }
}
