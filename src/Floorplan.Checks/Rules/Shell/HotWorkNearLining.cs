using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// Welded frames in walls that the plan says are lined with what burns. A room's own finish counts before the lining of the whole
/// shell.
/// </summary>
internal sealed class HotWorkNearLining : Rule
{
    /// <summary>Boards, plastics and foams that burn or char behind a weld. Common practice, no source.</summary>
    private static readonly HashSet<string> Burns = new(StringComparer.OrdinalIgnoreCase)
    {
        "acrylic", "chipboard", "fibreglass", "fiberglass", "foam", "FRP", "GRP", "hardboard", "HDPE", "laminate", "MDF", "OSB", "plank",
            "planks", "plastic", "plywood",
        "polycarbonate", "polyester", "polyethylene", "polypropylene", "polystyrene", "polyurethane", "PVC", "timber", "vinyl", "wood",
    };

    /// <summary>NFPA 51B: 35 ft, in mm.</summary>
    private const double Away = 35 * InchPound.MillimetresPerFoot;

    private static readonly string[] Between = [" ", ",", ";", "/", "-", "(", ")", ".", "+", "&"];

    public override string Name => "hot-work-near-lining";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says
        => "An opening of a container or trailer gets a welded frame in a wall that the plan lines with something that burns. A plan "
            + "that does not say what its walls are lined with is not looked at.";

    public override string Why
        => "Steel leads the heat of a cut or a weld behind the lining, where nobody sees it glow. Fires of this kind break out an hour "
            + "after the welder has gone home.";

    public override string Mend
        => "Cut and weld every frame before the walls are lined, or take the lining off round the hole first; or choose a frame that is "
            + "not welded and write `frame none`.";

    public override string Caution
        => "Cutting and welding start fires: a permit, shields, an extinguisher and a fire watch belong to it. Local codes and the fire "
            + "authority prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("NFPA 51B: nothing that burns within 35 ft (11 m) of cutting and welding, or shields and a fire watch; heat led through "
            + "metal walls counts", Origin.FromMemory, Force.ModelCode).In("us"),
        new("a permit from whoever answers for fire, shields, a fire watch: common practice of welders, no "
            + "distance", Origin.CommonPractice),
        new("boards, plastics and foams that burn", Origin.CommonPractice),
    ];

    public override string Bad => """
        plan "Cut after lining"
          units metric
        shell container 20 ft high-cube
          lining walls 50 "plywood", ceiling 50, floor 50
          doors east
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 2000 from west, 900 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("lining walls", "  lining walls 50 \"stainless sheet\", ceiling 50, floor 50"),
    ];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind is ShellKind.Container or ShellKind.Trailer;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var plan = context.Plan;
        var found = plan.Openings
            .Where(o => o.InShell && o.Kind != OpeningKind.CargoDoor && HasFrame(o))
            .Select(o => (Opening: o, Room: o.RoomA ?? o.RoomB, Lining: LiningOf(plan, o.RoomA ?? o.RoomB)))
            .Where(p => IsBurning(p.Lining))
            .ToList();
        foreach (var group in found.GroupBy(p => p.Lining, StringComparer.OrdinalIgnoreCase))
        {
            var first = group.First().Opening;
            yield return CheckContext.Find(
                this, Severity.Note, [.. group.Select(p => p.Opening.Id)],
                $"{(group.Count() == 1 ? "the frame" : "frames")} of {Named.List(group.Select(p => Named.Of(p.Opening)))} "
                    + $"{(group.Count() == 1 ? "is" : "are")} welded into a wall lined with {group.Key}",
                "weld before the walls are lined, or strip the lining round each hole; shield what burns "
                    + (context.Plan.Head.Code == CodeChoice.Us ? $"within {context.Walk(Away)} " : "near it ") + "and keep a fire watch",
                first.Span, first.Centre.Coordinate) with
            { Limit = context.SourceOf(this).Text };
        }
    }

    /// <summary>
    /// A vent is screwed on by its flange; everything else gets a frame, unless the plan says otherwise. Own assumption, as the sheet
    /// of frames takes it.
    /// </summary>
    private static bool HasFrame(Opening opening)
        => opening.Frame is { } wish ? wish.Form != FrameForm.None : opening.Kind != OpeningKind.Vent;

    private static string LiningOf(Plan plan, Room? room)
        => room?.Finishes.GetValueOrDefault("walls") is { Length: > 0 } finish && !IsVague(finish) ? finish : plan.Shell.WallLiningOf;

    /// <summary>A panel may be of anything, so it does not hide what the shell is lined with.</summary>
    private static bool IsVague(string finish) => Words(finish).All(w => w.StartsWith("panel", StringComparison.OrdinalIgnoreCase));

    private static bool IsBurning(string lining) => Words(lining).Any(Burns.Contains);

    private static string[] Words(string text) => text.Split(Between, StringSplitOptions.RemoveEmptyEntries);
}
