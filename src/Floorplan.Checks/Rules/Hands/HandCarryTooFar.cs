using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing.Carrying;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>
/// Measures the real way of every carry by hand, from where a load is taken up to where it is set down; a door on the way does not end
/// it.
/// </summary>
internal sealed class HandCarryTooFar : Rule
{
    /// <summary>Carries past this are outside what the carrying equations were fitted to, in mm.</summary>
    private const double Advised = 10_000;

    /// <summary>Carries past this have no accepted mass for a shift, in mm.</summary>
    private const double Most = 20_000;

    public override string Name => "hand-carry-too-far";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says => "Something is carried by hand farther than a person should carry all day.";

    public override string Why =>
        "Carrying costs time on every trip and wears out backs and shoulders; what a person can carry falls with distance. Wet floors "
            + "make long carries a slipping risk too.";

    public override string Mend
        => "Bring the two stops nearer to each other, open a hatch between them, or carry by trolley, rail or conveyor.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "LM-MMH carrying equations, Potvin and others, Ergonomics 64(8), 2021: fitted to carries of 2.1 m to 10 m",
            Origin.FoundInPublicCopy, Force.Measured),
        new("ISO 11228-1:2021, carrying: accepted mass falls beyond 10 m and is given up to 20 m", Origin.FromMemory, Force.Standard),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new("carry by hand", Advised, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new("longest carry by hand", Most, LimitUnit.Millimetres, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "A long carry"
          units metric

        shell container 40 ft high-cube
          lining walls 60, ceiling 60, floor 40
          doors  west

        room work "Packing room" clean from west to east

        door d1 work to outside, south wall, 5500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in work, 3000 from west, centred, 100
        drain fd2 floor in work, 9000 from west, centred, 100
        sink s1 hand in work, 400 x 350, against south wall, 1000 from west
        sink s2 hand in work, 400 x 350, against south wall, 1000 from east

        station wash "Wash table" in work
          size   1200 x 600 x 900
          place  against north wall, 100 from west
          worker south

        station pack "Packing table" in work
          size   1200 x 600 x 900
          place  against north wall, 100 from east
          worker south

        flow product
          wash -> pack by hand
        """;

    public override IReadOnlyList<LineChange> Mended => [new("wash ->", "  wash -> pack by trolley 600 wide")];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var carry in context.Facts.Ways.Carries)
        {
            if (Tiers.Above(context, this, carry.Length.Value) is { } limit)
            {
                yield return Report(context, carry, limit);
            }
        }
    }

    private Finding Report(CheckContext context, Carry carry, AppliedLimit limit)
    {
        string from = Named.Of(carry.From);
        string to = Named.Of(carry.To);
        var longest = carry.Legs.MaxBy(l => l.Route!.LengthMm)!.Route!;
        return CheckContext.Find(
            this,
            limit,
            carry.Length,
            [carry.From.Name, carry.To.Name],
            $"{(carry.Flow.Label.Length == 0 ? carry.Flow.Stream.ToString().ToLowerInvariant() : carry.Flow.Label)} is carried by hand "
                + $"{carry.Length.Text} from {from} to {to}",
            $"shorten the way by {context.Walk(carry.Length.Value - limit.Value)} by moving {from} and {to} nearer to each other, or "
                + "write another carriage for this leg, such as: by trolley 600 wide",
            carry.Legs[0].Leg.Span,
            longest.Path.GetPointN(longest.Path.NumPoints / 2).Coordinate);
    }
}
