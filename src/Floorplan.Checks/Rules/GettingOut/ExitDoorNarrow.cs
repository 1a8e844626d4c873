using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>The clear width of every door that leads out.</summary>
internal sealed class ExitDoorNarrow : Rule
{
    private const string Door = "clear width of an exit door";
    private const string WayOut = "least width of a way out";

    /// <summary>70 sq ft.</summary>
    private const double SmallRoom = 70 * InchPound.SquareMetresPerSquareFoot;

    public override string Name => "exit-door-narrow";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "A door that leads out is too narrow to get out by.";

    public override string Why => "Through a narrow door people leave one by one and sideways, and two cannot carry a third.";

    public override string Mend
        => "Make the hole wider, and leave room for its frame. The width is that of the clear way: frame and an open leaf take 2 in or "
            + "50 mm of it.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("NFPA 101, 7.2.1.2.3: 32 in clear; less for a room of at most 70 sq ft", Origin.FoundInPublicCopy, Force.ModelCode),
        new("29 CFR 1910.36(g)(2), US CFR: a way out at least 28 in wide at all points", Origin.FoundInPublicCopy, Force.Law),
        new("ISO 14122-2: walkways 600 mm at least", Origin.FoundInPublicCopy),
        new(
            "29 CFR 1910.34(a), US CFR: leaves out mobile workplaces such as vehicles; for a trailer the figures are advice",
            Origin.FromMemory, Force.Law),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Door, 812.8, LimitUnit.Millimetres, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Door, 600, LimitUnit.Millimetres, Sources[2], Severity.Warning, CodeChoice.Eu, CodeChoice.None),
        new(WayOut, 711.2, LimitUnit.Millimetres, Sources[1], Severity.Error, CodeChoice.Us),
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
            bool small = joined.Rooms.Count == 1 && context.Facts.RoomSizes[joined.Rooms[0].Id].Area.Value <= SmallRoom;
            var limits = holding.Where(l => !(small && l is { SetBy: null, Published.Key: Door, Published.Source.Force: Force.ModelCode }))
                .ToList();
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
}
