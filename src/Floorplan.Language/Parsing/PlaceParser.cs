using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing;

/// <summary>Reads one place term, which stands between commas.</summary>
internal static class PlaceParser
{
    private const string Ways =
        "`against north wall`, `300 from west`, `at 1200, 300`, `east of NAME gap 100`, `centred`, `centred on NAME`, `in line with "
            + "NAME`, `flush south with NAME` or `corner north-west`";

    public static bool Starts(Cursor c)
        => c.AtNumber || c.AtSide() || c.IsWord("against") || c.IsWord("at") || c.IsWord("centred") || c.IsWord("centered")
        || c.IsWord("flush") || c.IsWord("corner") || (c.IsWord("in") && c.IsWord("line", 1));

    /// <summary>One term; null, with the mistake told, when it cannot be read.</summary>
    public static PlaceTerm? Term(Cursor c)
    {
        var start = c.Here;
        if (c.Try("against"))
        {
            c.Try("the");
            return c.Side("a wall") is { } wall && c.Expect("wall") ? new AgainstTerm(wall, start.To(c.Before)) : null;
        }

        if (c.Try("at"))
        {
            return At(c, start);
        }

        if (c.Try("corner"))
        {
            return Corner(c, start);
        }

        if (c.Try("centred") || c.Try("centered"))
        {
            return !c.Try("on")
                ? new CentredTerm(start)
                : c.Name("the name of a thing") is { } on
                ? new CentredOnTerm(on, start.To(c.Before))
                : null;
        }

        if (c.Try("in", "line", "with"))
        {
            return c.Name("the name of a thing") is { } other ? new InLineTerm(other, start.To(c.Before)) : null;
        }

        if (c.Try("flush"))
        {
            return c.Side("an edge") is { } edge && c.Expect("with") && c.Name("the name of a thing") is { } other
                ? new FlushTerm(edge, other, start.To(c.Before))
                : null;
        }

        if (c.AtSide())
        {
            return Beside(c, start);
        }

        if (c.AtNumber)
        {
            return c.Length("a distance", mayBeNegative: true) is { } distance && From(c) && c.Side("a side") is { } face
                ? new FromTerm(distance, face, start.To(c.Before))
                : null;
        }

        c.Wrong("a place", "a place is one of " + Ways);
        return null;
    }

    private static bool From(Cursor c)
    {
        if (c.Try("from"))
        {
            c.Try("the");
            return true;
        }

        c.Wrong("`from` and a side", c.BareUnits == UnitSystem.Metric
            ? "write a place such as `300 from west`, or a size such as `900 x 2050`"
            : "write a place such as `12 from west`, or a size such as `36 x 80`, in inches");
        return false;
    }

    private static BesideTerm? Beside(Cursor c, Text.SourceSpan start)
    {
        if (c.Side("a side") is not { } side || !c.Expect("of") || c.Name("the name of a thing") is not { } other)
        {
            return null;
        }

        LengthSyntax? gap = null;
        if (c.Try("gap") && (gap = c.Length("a gap", mayBeNegative: true)) is null)
        {
            return null;
        }

        return new BesideTerm(side, other, gap, start.To(c.Before));
    }

    private static AtTerm? At(Cursor c, Text.SourceSpan start)
    {
        if (c.Length("the distance from the west face", mayBeNegative: true) is not { } x)
        {
            return null;
        }

        if (!c.NextPart(n => n.AtNumber))
        {
            c.Wrong("a comma and the distance from the south face", "write `at 1200, 300`");
            return null;
        }

        return c.Length("the distance from the south face", mayBeNegative: true) is { } y ? new AtTerm(x, y, start.To(c.Before)) : null;
    }

    private static CornerTerm? Corner(Cursor c, Text.SourceSpan start)
    {
        string[] parts = c.Current.ToLowerInvariant().Split('-');
        Side? northOrSouth = parts[0] switch { "north" => Side.North, "south" => Side.South, _ => null };
        Side? eastOrWest = parts.Length == 2 ? parts[1] switch { "east" => Side.East, "west" => Side.West, _ => null } : null;
        if (northOrSouth is null || eastOrWest is null)
        {
            c.Wrong("a corner: `north-west`, `north-east`, `south-west` or `south-east`");
            return null;
        }

        c.Skip();
        return new CornerTerm(northOrSouth.Value, eastOrWest.Value, start.To(c.Before));
    }
}
