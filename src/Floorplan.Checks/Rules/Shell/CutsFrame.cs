using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>Every opening in the shell against the posts, rails, headers, sills and castings of its wall.</summary>
public sealed class CutsFrame : Rule
{
    /// <summary>Setting out on steel is no finer; less is touching. Own assumption.</summary>
    private static readonly Length Tolerance = Length.FromMillimetres(1);

    public override string Name => "cuts-frame";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "An opening is cut into a post, rail, header, sill or casting of the shell.";

    public override string Why => "The posts and rails carry the box and what is stacked on it, and the corner castings are what it is lifted by. Cut through, the box sags, twists when lifted, or comes down.";

    public override string Mend => "Move the opening clear of the frame, or make it smaller. Leave room for the frame of the opening itself.";

    public override string? Caution => "Structural cut: have an engineer confirm every opening and its frame before steel is cut, and never lift a box with cut posts or castings.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("ISO 668 and ISO 1161: outside sizes and corner castings of series 1 containers; post and rail sizes are usual ones", Origin.FromMemory),
    ];

    public override string Bad => Box("50 from west");

    public override string Good => Box("400 from west");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var opening in context.Plan.Openings.Where(o => o.InShell && o.Kind != OpeningKind.CargoDoor))
        {
            bool alongX = opening.Wall is Side.North or Side.South;
            var from = alongX ? opening.Start.X : opening.Start.Y;
            var to = alongX ? opening.End.X : opening.End.Y;
            var bottom = opening.Sill;
            var top = opening.Sill + opening.Height;
            foreach (var member in context.Plan.Shell.Frame.Where(m => m.Wall == opening.Wall && IsInWallOf(m, opening)))
            {
                var along = Length.Min(to, member.To) - Length.Max(from, member.From);
                var up = Length.Min(top, member.Top) - Length.Max(bottom, member.Bottom);
                if (along > Tolerance && up > Tolerance)
                {
                    yield return Cut(context, opening, member, along, up, from, to);
                    break;
                }
            }
        }
    }

    // An L-shaped shed has two walls that face the same way.
    private static bool IsInWallOf(FrameMember member, Opening opening)
    {
        var reveal = opening.Reveal.EnvelopeInternal;
        return member.At is not { } at
            || (opening.Wall is Side.North or Side.South
                ? Math.Abs(reveal.Centre.Y - at.Millimetres) <= reveal.Height
                : Math.Abs(reveal.Centre.X - at.Millimetres) <= reveal.Width);
    }

    private Finding Cut(CheckContext context, Opening opening, FrameMember member, Length along, Length up, Length from, Length to)
    {
        bool upright = member.Part is FramePart.Post or FramePart.Casting or FramePart.WheelArch;
        var cut = upright ? along : up;
        string mend = upright
            ? $"move {Named.Of(opening)} {context.Text(Length.Min(to - member.From, member.To - from))} {Direction(opening.Wall, to - member.From < member.To - from)}"
            : $"lower the head or raise the sill of {Named.Of(opening)} by {context.Text(up)}";
        return CheckContext.Find(
            this, Severity.Error, [opening.Id], $"{Named.Of(opening)} cuts {context.Text(cut)} into the {member.Name} of the {opening.Wall.ToString().ToLowerInvariant()} wall", mend, opening.Span, opening.Centre.Coordinate)
            with
        { Limit = $"no cut in the frame ({member.Origin})", Measured = cut.Millimetres, LimitValue = 0 };
    }

    private static string Direction(Side wall, bool back) => (wall is Side.North or Side.South, back) switch
    {
        (true, true) => "west",
        (true, false) => "east",
        (false, true) => "south",
        _ => "north",
    };

    private static string Box(string place) => $"""
        plan "Door and post"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors east
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, {place}, 900 x 2050, swings out, opens from inside
        """;
}
