using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// Every opening in the shell, and room for its own frame, against the posts, rails, headers, sills and castings of its wall.
/// </summary>
internal sealed class CutsFrame : Rule
{
    /// <summary>Setting out on steel is no finer; less is touching. Own assumption.</summary>
    private static readonly Length Tolerance = Length.FromMillimetres(1);

    /// <summary>A sill this low stands on the rail, which is its frame; own assumption.</summary>
    private static readonly Length StandsOnRail = Length.FromMillimetres(200);

    public override string Name => "cuts-frame";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says
        => "An opening, the frame round it, or a hole for a pipe is cut into a post, rail, header, sill or casting of the shell.";

    public override string Why
        => "The posts and rails carry the box and what is stacked on it, and the corner castings are what it is lifted by. Cut through, "
            + "the box sags, twists when lifted, or comes down. An opening beside a post still needs steel of its own all round.";

    public override string Mend
        => "Move the opening clear of the frame, or make it smaller. Leave room for the frame of the opening itself.";

    public override string? Caution
        => "Structural cut: have an engineer confirm every opening and its frame before steel is cut, and never lift a box with cut "
            + "posts or castings.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "ISO 668 and ISO 1161: outside sizes and corner castings of series 1 containers; post and rail sizes are usual ones",
            Origin.FromMemory, Force.Standard),
        new("50 mm square tube round an opening", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("wall left for the opening's own frame", 50, LimitUnit.Millimetres, Sources[1], Severity.Warning)];

    public override string Bad => """
        plan "Door and post"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors east
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 50 from west, 900 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d1", "door d1 work to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself, opens from inside"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var byWall = context.Plan.Shell.Frame.ToLookup(m => m.Wall);
        var frames = context.Facts.CutOuts.ToDictionary<CutOut, Opening,
            OpeningFrame?>(c => c.Opening, c => c.Frame, ReferenceEqualityComparer.Instance);
        foreach (var opening in context.Plan.Openings.Where(o => o.InShell && o.Kind != OpeningKind.CargoDoor))
        {
            var hole = FrameHole.Of(opening, Tolerance);
            var members = byWall[opening.Wall].Where(m => IsInWallOf(m, opening)).ToList();
            if (Deepest(hole, members) is var (member, cut))
            {
                yield return Cut(
                    context, opening.Id, Named.Of(opening), opening.Wall, member, cut, Way(context, opening, member, cut.By.Millimetres),
                    opening.Span, opening.Centre.Coordinate);
            }
            else if (OwnFrame(context, opening, frames.GetValueOrDefault(opening)) is { } limit
                && Crowded(members, opening, hole, limit) is { } crowded)
            {
                yield return Crowds(context, opening, crowded.Member, crowded.Left, limit);
            }
        }

        foreach (var finding in PipeHoles(context, byWall))
        {
            yield return finding;
        }
    }

    /// <summary>
    /// How broad the frame is that the hole is really cut for; the plan's own figure holds for all. Null for an opening without a
    /// frame.
    /// </summary>
    private AppliedLimit? OwnFrame(CheckContext context, Opening opening, OpeningFrame? frame) => context.Limit(this) switch
    {
        { SetBy: null } usual => frame is null ? null : usual with
        {
            Value = frame.Section.Face.Millimetres,
            Text = $"room for its frame, {frame.Section.Name(context.Plan.Units)} "
                + $"({(opening.Frame is null ? Sources[1].Text : "this plan")})",
        },
        var limit => limit,
    };

    /// <summary>A pipe or a cable through a post weakens it as a door does; holes beside it need no frame of their own.</summary>
    private IEnumerable<Finding> PipeHoles(CheckContext context, ILookup<Side, FrameMember> byWall)
    {
        foreach (var hole in context.Facts.Holes.Where(h => h is { Wall: not null, Width: not null }))
        {
            var middle = hole.X + hole.Wall!.From;
            var (across, up) = (hole.Width!.Value / 2, (hole.Depth ?? hole.Width.Value) / 2);
            var rectangle =
                new FrameHole(middle - across, middle + across, hole.Point.Height!.Value - up, hole.Point.Height.Value + up, Tolerance);
            if (Deepest(rectangle, byWall[hole.Wall.Side].Where(m => m.At is not { } at || at == hole.Wall.At)) is var (member, cut))
            {
                string way = $"move {hole.Point.Id} {Say.SizeUp(cut.By.Millimetres, context.Plan.Units)}, clear of the {member.Name}";
                yield return Cut(
                    context, hole.Point.Id, $"hole {hole.Point.Id}", hole.Wall.Side, member, cut, way, hole.Point.Span,
                    hole.Point.At.Coordinate);
            }
        }
    }

    /// <summary>An L-shaped shed has two walls that face the same way.</summary>
    private static bool IsInWallOf(FrameMember member, Opening opening)
    {
        var reveal = opening.Reveal.EnvelopeInternal;
        return member.At is not { } at
            || (opening.Wall is Side.North or Side.South
                ? Math.Abs(reveal.Centre.Y - at.Millimetres) <= reveal.Height
                : Math.Abs(reveal.Centre.X - at.Millimetres) <= reveal.Width);
    }

    /// <summary>The member that a hole goes deepest into; null when it is clear of all.</summary>
    private static (FrameMember Member, FrameCut Cut)? Deepest(FrameHole hole, IEnumerable<FrameMember> members)
    {
        var deepest = members.Select(m => (Member: m, Cut: hole.Into(m))).Where(p => p.Cut is not null)
            .OrderByDescending(p => p.Cut!.By.Nanometres).FirstOrDefault();
        return deepest.Cut is { } cut ? (deepest.Member, cut) : null;
    }

    private Finding Cut(
        CheckContext context, string id, string name, Side wall, FrameMember member, FrameCut cut, string way, SourceSpan span,
        Coordinate at) => CheckContext.Find(
        this, Severity.Error, [id], $"{name} cuts {context.Text(cut.By)} into the {member.Name} of the {wall.Word()} wall", way, span, at)
        with
        { Limit = $"no cut in the frame ({member.Origin})", Measured = cut.By.Millimetres, LimitValue = 0 };

    private Finding Crowds(CheckContext context, Opening opening, FrameMember member, Length left, AppliedLimit limit) => CheckContext.Find(
        this, limit, left.Millimetres, [opening.Id],
        $"{Named.Of(opening)} leaves {context.Text(left)} of wall to the {member.Name} for its own frame",
        Way(context, opening, member, limit.Value - left.Millimetres), opening.Span, opening.Centre.Coordinate);

    /// <summary>
    /// The member that lies nearest within the width of the opening's own frame, beside it, above it, or below a high sill.
    /// </summary>
    private static (FrameMember Member, Length Left)? Crowded(
        IEnumerable<FrameMember> members, Opening opening, FrameHole hole, AppliedLimit limit)
    {
        var room = Length.FromMillimetres(limit.Value);
        var grown = hole.Grown(room, below: opening.Sill > StandsOnRail ? room : Length.Zero);
        (FrameMember Member, Length Left)? nearest = null;
        foreach (var member in members)
        {
            if (grown.Into(member) is not null
                && room - hole.Gap(member) > Tolerance
                && (nearest is null || hole.Gap(member) < nearest.Value.Left))
            {
                nearest = (member, hole.Gap(member));
            }
        }

        return nearest;
    }

    private static string Way(CheckContext context, Opening opening, FrameMember member, double by)
    {
        string step = Say.SizeUp(by, context.Plan.Units);
        if (member.Part is FramePart.Post or FramePart.Casting or FramePart.WheelArch)
        {
            bool alongX = opening.Wall is Side.North or Side.South;
            var middle = alongX ? opening.Centre.X : opening.Centre.Y;
            bool back = middle < (member.From + member.To) / 2;
            return $"move {Named.Of(opening)} {step} {(alongX ? (back ? "west" : "east") : (back ? "south" : "north"))}, clear of the "
                + $"{member.Name}";
        }

        bool above = member.Bottom > opening.Sill;
        return above
            ? $"make {Named.Of(opening)} {step} lower, or choose a taller shell"
            : $"raise the sill of {Named.Of(opening)} by {step}";
    }
}
