using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Sizing.Lifting;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>
/// Every lift by hand out of a station and onto the next, by the revised NIOSH equation at its most favourable: load close to the body,
/// no twist, a firm grip, one lift now and then. What is too heavy so is too heavy in any case.
/// </summary>
internal sealed class LiftTooHeavy : Rule
{
    private const string Index = "lifting index";
    private const string Far = "lifting index that hurts most people";
    private const string MassOfWomen = "mass that is lifted where women work";

    /// <summary>Above this index most people are at raised risk, however fit (94-110, 2021, section 1.3).</summary>
    private const double FarOver = 3;

    /// <summary>At this index nearly all can lift safely; the design goal of the equation.</summary>
    private const double Goal = 1;

    /// <summary>For rounding errors of the calculation.</summary>
    private const double Tolerance = 1e-9;

    public override string Name => "lift-too-heavy";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says
        => "A piece of product, a full bin or another load carried by hand is too heavy to be lifted, even held close and lifted seldom.";

    public override string Why
        => "A back that lifts too much gives out after a season, not after a lift. Reaching out, twisting and lifting often make it "
            + "worse than the figure says.";

    public override string Mend
        => "Use a rail, a hoist, a trolley of the bench's height or a conveyor, or make the pieces lighter. Bring both heights near to "
            + "30 in.";

    public override string? Caution
        => "The equation does not cover cold rooms, live animals, liquids, low headroom, one hand or a team of two; there somebody who "
            + "knows has to look.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, 1994, rev. 2021: a lifting index of 1 is the design goal",
            Origin.FoundInPublicCopy, Force.Measured),
        new("ISO 11228-1:2021, reference mass of a load that is lifted: 20 kg where women work, 25 kg for men", Origin.FromMemory,
            Force.Standard),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Index, Goal, LimitUnit.Count, Sources[0], Severity.Warning),
        new(Far, FarOver, LimitUnit.Count, Sources[0], Severity.Error),
        new(MassOfWomen, 20, LimitUnit.Kilograms, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "Ham room"
          units metric
          product hams, 30 kg each
        shell shed 6000 x 3000 x 2600
        room salt "Salting" clean from west to east
        door d1 salt to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        drain fd1 floor in salt, 3000 from west, centred, 100
        sink s1 hand in salt, 400 x 350, against south wall, 2800 from west
        station bench "Salting bench" in salt
          size   1500 x 600 x 850
          place  against north wall, 500 from west
          worker south
        station rack "Turning table" in salt
          size   1500 x 600 x 850
          place  against north wall, 500 from east
          worker south
        flow product
          outside -> d1 -> bench -> rack by hand
        """;

    public override IReadOnlyList<LineChange> Mended => [new("product hams,", "  product hams, 9 kg each")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        // What a line carries is one load, lifted several times: its worst lift is told.
        var far = context.Limit(this, Far)!;

        // Men may lift 25 kg by the standard, which is more than the equation ever lets them.
        var mass = limit.SetBy is null && context.Plan.Head.People.Who != WhoWorks.Men ? context.Limit(this, MassOfWomen) : null;
        foreach (var line in context.Facts.Lifts.GroupBy(l => (l.Flow, l.Leg.Chain)))
        {
            var over = line.Where(l => l.Index?.Value > limit.Value + Tolerance).ToList();
            if (over.Count > 0)
            {
                var worst = over.OrderByDescending(l => l.Index!.Value).ThenByDescending(l => l.NotCovered is null).First();
                bool most = limit.SetBy is null && worst.Index!.Value > far.Value + Tolerance;
                yield return Report(context, worst, over.Count - 1, most ? far : limit);
            }
            else if (mass is not null && line.MaxBy(l => l.Load?.Value ?? 0) is { Load: { } load } heavy
                && load.Value > mass.Value + Tolerance)
            {
                yield return OverMass(context, heavy, load, mass);
            }
        }
    }

    /// <summary>The equation allows it, and the standard does not.</summary>
    private Finding OverMass(CheckContext context, HandLift lift, Figure load, AppliedLimit mass) => CheckContext.Find(
        this, mass, load, [.. new[] { lift.From, lift.To }.OfType<Stop>().Select(s => s.Name)],
        $"{load.Text} are lifted by hand by one person",
        "write another carriage for this leg, such as: by rail, or by trolley 600 wide, or lift with two people and accept it",
        lift.Leg.Span, lift.Stations.FirstOrDefault()?.Bounds.Centre.Coordinate);

    private Finding Report(CheckContext context, HandLift lift, int more, AppliedLimit limit)
    {
        var index = lift.Index!;
        string figure = double.IsFinite(index.Value) ? "a lifting index of at least " + index.Text : "past what the equation allows at all";
        string where =
            $"{(lift.From is { } from ? " from " + Named.Of(from) : "")}{(lift.To is { } to ? " to " + Named.Of(to) : " to outside")}";
        string covers = lift.NotCovered is { } why
            ? $", if the lifting equation held; it is not covered by the equation, which leaves out {why}"
            : "";
        string others =
            more switch
            {
                0 => "",
                1
                    => "; one more lift on this line is too heavy",
                _
                        => FormattableString.Invariant($"; {more} more lifts on this line are too heavy")
            };
        var finding = CheckContext.Find(
            this, limit, index, [.. new[] { lift.From, lift.To }.OfType<Stop>().Select(s => s.Name)],
            $"{lift.Load!.Text} are lifted by hand{where}: {figure}{covers}{others}",
            "write another carriage for this leg, such as: by rail, or by trolley 600 wide, or lift with two people and accept it",
            lift.Leg.Span, lift.Stations.FirstOrDefault()?.Bounds.Centre.Coordinate);
        // What the equation leaves out is no lighter for it: cold hands and live loads make a lift worse.
        return finding with { Figures = [lift.Load, index] };
    }
}
