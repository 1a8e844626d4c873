using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

/// <summary>
/// ISO 668:2013 (public copy of its table): a 40 ft box is 12 192 mm outside and at least 11 998 mm inside, 2438 and 2330 mm
/// wide. ISO 1161: a corner fitting is 178 mm long; the post at the closed end is taken as long (own assumption).
/// </summary>
internal static class ShellEdges
{
    private const double EndWall = (2438 - 2330) / 2.0;
    private const double Fitting = 178;
    private const double Lining = 60;

    /// <summary>Less than 1 mm is setting out, so the nearest value past a limit is 2 mm from it.</summary>
    public static IReadOnlyList<Edge> All { get; } =
    [
        new("cuts-frame", "50 mm of wall for the opening's own frame (own assumption), to the corner post", 50, 48, FromPost, "d1") { Set = ("40 mm", "60 mm") },
        new("cuts-frame", "50 mm (own assumption), to the header of the closed end", 50, 48, BelowHeader, "h1") { Set = ("40 mm", "60 mm") },
    ];

    /// <summary>A door this far from the post of the closed west end, which stands 178 mm in from the outside.</summary>
    private static string FromPost(double left) => Box(Invariant(
        $"door d1 work to outside, south wall, {left + Fitting - EndWall - Lining} from west, 900 x 2050, swings out, opens from inside"));

    /// <summary>
    /// A hatch this far below the header: the roof lies 241 mm of the height less the floor's 164.5 mm above the inside; the
    /// header is a tube of 60 mm (typical builder's drawing, from memory) 6 mm below the fittings' top (builder's specification).
    /// </summary>
    private static string BelowHeader(double left) => Box(Invariant(
        $"hatch h1 work to outside, west wall, centred, 600 x 400, sill {2591 - 164.5 - Lining - 6 - 60 - left - 400}"));

    private static string Box(string opening) => $"""
        plan "Edge"
          units metric
          code eu
        shell container 40 ft standard
          lining walls 60, floor 60
          doors  east
        room work "Work room" dry from west to east
        {opening}
        """;
}
