using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>What an overhead rail may say.</summary>
public static class RailDetails
{
    public static Detail<NameSyntax> Room { get; } = new(
        "in",
        "the room that its points count from",
        ["in receiving", "in filleting"],
        Forms.Room);

    public static Detail<IReadOnlyList<CornerSyntax>> Path { get; } = new(
        "path",
        "its points, each east then north",
        ["path 310 610, 3010 610, 3010 1810", "path 330 610, 3010 610, 3010 1810"],
        c => ShellDetails.PointsOf(c, "point"))
    {
        Needed = Needed.Always,
        InFeet = "path 12 24, 120 24",
    };

    public static Detail<LengthSyntax> Height { get; } = new(
        "height",
        "the height of its hooks above the floor",
        ["height 2210", "height 2230"],
        c => c.Length("the height of the hooks"))
    { Needed = Needed.Always, InFeet = "height 7'-3\"" };

    public static Detail<LengthSyntax> Pitch { get; } = new(
        "pitch", "how far the hooks are apart", ["pitch 610", "pitch 630"], c => c.Length("the spacing of the hooks"))
    { Use = Use.NotYet };

    public static Detail<IReadOnlyList<NameSyntax>> Through { get; } = new(
        "through", "the openings that it passes", ["through o1", "through d1"], ThroughOf);

    public static IReadOnlyList<Detail> All { get; } = [Path, Height, Pitch, Through];

    private static IReadOnlyList<NameSyntax> ThroughOf(Cursor c)
    {
        var names = new List<NameSyntax>();
        do
        {
            if (c.Name("the name of an opening") is { } name)
            {
                names.Add(name);
            }
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word));
        return names;
    }
}
