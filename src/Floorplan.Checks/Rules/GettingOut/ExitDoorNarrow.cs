using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>The clear width of every door that leads out.</summary>
internal sealed class ExitDoorNarrow : Rule
{
    private const string Door = "clear width of an exit door";
    private const string WayOut = "least width of a way out";
    private const string Body = "width that a person passes through";

    /// <summary>10 sq ft: a closet that nobody works in.</summary>
    private const double Closet = 10 * InchPound.SquareMetresPerSquareFoot;

    public override string Name => "exit-door-narrow";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "A door that leads out is too narrow to get out by.";

    public override string Why => "Through a narrow door people leave one by one and sideways, and two cannot carry a third.";

    public override string Mend
        => "Make the hole wider, and leave room for its frame. The width is that of the clear way: frame and an open leaf take 2 in or "
            + "50 mm of it.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("IBC 2018, 1010.1.1, as adopted in Minnesota: 32 in clear; not for closets of less than 10 sq ft. NFPA 101, "
            + "where it was "
            + "adopted, lets rooms of at most 70 sq ft be narrower", Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
        new Source("29 CFR 1910.36(g)(2), US CFR: a way out at least 28 in wide at all points", Origin.FoundInPublicCopy, Force.Law)
            .In("us"),
        new("shoulders of a large man, 567 mm by ANSUR II, in working clothes: 600 mm", Origin.OwnAssumption, Force.Measured),
        new Source(
            "29 CFR 1910.34(a), US CFR: leaves out mobile workplaces such as vehicles; for a trailer the figures are advice",
            Origin.FromMemory, Force.Law).In("us"),
        new Source("ASR A2.3, Germany, 2022: doors on ways out 0.80 m wide for at most 5 people, 0.90 m for 50, 1.00 m for 100",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("de"),
        new Source("fire safety risk assessment guide, UK, offices and shops: 750 mm; less for fewer than 5 people",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("uk"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Door, 812.8, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Door, 800, LimitUnit.Millimetres, Sources[4], Severity.Note),
        new(Door, 750, LimitUnit.Millimetres, Sources[5], Severity.Note),
        new(WayOut, 711.2, LimitUnit.Millimetres, Sources[1], Severity.Error),
        new(Body, 600, LimitUnit.Millimetres, Sources[2], Severity.Warning),
    ];

    public override string Bad => """
        plan "A door out"
          units metric
          code us
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 600 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d1", "door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var holding = Tiers.Holding(context, this);
        bool vehicle = context.Plan.Shell.Kind == ShellKind.Trailer;
        foreach (var joined in JoinedRooms.Of(context.Plan))
        {
            bool small = joined.Rooms.Count == 1 && context.Facts.RoomSizes[joined.Rooms[0].Id].Area.Value < Closet;
            int people = context.Facts.Crew.In(joined.Rooms);
            var limits = holding.Where(l => !(small && l is { SetBy: null, Published.Key: Door, Published.Source.Force: Force.ModelCode }))
                .Select(l => ForPeople(l, people)).OfType<AppliedLimit>().ToList();
            foreach (var exit in joined.Exits.Where(e => e.Kind != OpeningKind.CargoDoor))
            {
                if (Tiers.Below(limits, exit.Width.Millimetres) is { } limit)
                {
                    var holds = vehicle && limit.Severity == Severity.Error ? limit with { Severity = Severity.Warning } : limit;
                    yield return CheckContext.Find(
                        this, holds, exit.Width.Millimetres, [exit.Id],
                        $"{Named.Of(exit)} leads out and is {context.Text(exit.Width)} wide",
                        $"make {Named.Of(exit)} {Say.SizeUp(limits.Max(l => l.Value), context.Plan.Units)} wide", exit.Span,
                        exit.Centre.Coordinate);
                }
            }
        }
    }

    /// <summary>What Germany and the United Kingdom ask goes by the people whose way it is; null where nothing is asked.</summary>
    private AppliedLimit? ForPeople(AppliedLimit limit, int people)
    {
        if (limit.SetBy is not null || people <= 5)
        {
            return limit.SetBy is null && limit.Published.Source == Sources[5] && people is > 0 and < 5 ? null : limit;
        }

        return limit.Published.Source != Sources[4] ? limit : limit with
        {
            Value = people <= 50 ? 900 : 1000,
            Text = limit.Text.Replace("800 mm", people <= 50 ? "900 mm" : "1000 mm", StringComparison.Ordinal),
        };
    }
}
