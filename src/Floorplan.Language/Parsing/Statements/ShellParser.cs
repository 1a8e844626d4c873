using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class ShellParser : StatementParser<ShellStatement>
{
    protected override IReadOnlyDictionary<string, Action<ShellStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<ShellStatement, Cursor>>
    {
        ["lining"] = Lining,
        ["doors"] = (s, c) => s.Doors = c.Side("the end that the doors are in"),
        ["hitch"] = Hitch,
        ["axles"] = Axles,
        ["weight"] = Weight,
        ["ground"] = Ground,
        ["true"] = (s, c) =>
        {
            if (c.Expect("north") && (s.TrueNorth = c.Number("degrees clockwise from up the sheet")) is not null)
            {
                c.Try("degrees");
            }
        },
        ["posts"] = (s, c) => s.PostsEvery = c.Expect("every") ? c.Length("a spacing") : null,
        ["walls"] = (s, c) => s.WallThickness = c.Length("the thickness of the walls"),
        ["eaves"] = (s, c) => s.Eaves = c.Length("the height of the eaves"),
        ["corners"] = Corners,
    };

    protected override ShellStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(ShellStatement s, Cursor c)
    {
        s.Kind = c.Word("a shell", "container", "trailer", "shed");
        switch (s.Kind?.Text)
        {
            case "container":
                s.ContainerFeet = c.Number("the container's length in feet: 10, 20, 40 or 45");
                _ = c.Try("ft") || c.Try("feet") || c.Try("foot");
                s.HighCube = c.Try("high-cube") || c.Try("high", "cube");
                _ = s.HighCube || c.Try("standard");
                break;
            case "trailer":
                s.Size = c.Size("the trailer's outside length", 3, 3);
                break;
            case "shed":
                Shed(s, c);
                break;
        }
    }

    private static void Shed(ShellStatement s, Cursor c)
    {
        if (c.Try("corners"))
        {
            Corners(s, c);
        }
        else if (!c.AtPhraseEnd)
        {
            s.Size = c.Size("the shed's outside length", 2, 3);
        }
    }

    private static void Lining(ShellStatement s, Cursor c)
    {
        do
        {
            if (c.Word("what is lined", "walls", "ceiling", "floor") is not { } what)
            {
                return;
            }

            var thickness = c.Length("a thickness");
            switch (what.Text)
            {
                case "walls":
                    s.LiningWalls = thickness;
                    s.LiningWallsOf = c.TryText();
                    break;
                case "ceiling":
                    s.LiningCeiling = thickness;
                    break;
                default:
                    s.LiningFloor = thickness;
                    break;
            }
        }
        while (c.NextInList(n => n.IsWord("walls") || n.IsWord("ceiling") || n.IsWord("floor")));
    }

    private static void Hitch(ShellStatement s, Cursor c)
    {
        s.Hitch = c.Side("the end that the hitch is at");
        if (s.Hitch is not null && c.NextInList(n => n.AtNumber && Holds(n, "ahead")))
        {
            s.HitchAhead = c.Length("how far the coupling lies before the box");
            c.Expect("ahead");
        }
    }

    private static void Axles(ShellStatement s, Cursor c)
    {
        s.Axles = c.Number("a number of axles");
        while (s.Axles is not null && c.NextInList(n => n.AtNumber && (Holds(n, "hitch") || Holds(n, "each"))))
        {
            if (Holds(c, "hitch"))
            {
                s.AxlesFromHitch = c.Length("how far the middle of the axles lies behind the coupling");
                _ = c.Expect("from") && c.Expect("hitch");
            }
            else
            {
                s.AxleRated = c.Quantity("what one axle may carry", QuantityKind.Mass);
                c.Expect("each");
            }
        }
    }

    private static void Weight(ShellStatement s, Cursor c)
    {
        do
        {
            var weight = c.Quantity("a weight", QuantityKind.Mass);
            if (weight is null || c.Word("what it is", "empty", "rated") is not { } what)
            {
                return;
            }

            if (what.Text == "empty")
            {
                s.WeightEmpty = weight;
            }
            else
            {
                s.WeightRated = weight;
            }
        }
        while (c.NextInList(n => n.AtNumber && (Holds(n, "empty") || Holds(n, "rated"))));
    }

    /// <summary>Whether a word stands anywhere before the next comma.</summary>
    private static bool Holds(Cursor c, string word)
    {
        for (int ahead = 0; c.KindAt(ahead) is { } kind && kind != TokenKind.Comma; ahead++)
        {
            if (c.IsWord(word, ahead))
            {
                return true;
            }
        }

        return false;
    }

    private static void Ground(ShellStatement s, Cursor c)
    {
        s.GroundBelowFloor = c.Length("how far the ground lies below the floor");
        if (s.GroundBelowFloor is not null && c.Expect("below"))
        {
            c.Expect("floor");
        }
    }

    private static void Corners(ShellStatement s, Cursor c)
    {
        do
        {
            if (c.Length("how far east a corner is", mayBeNegative: true) is not { } x || c.Length("how far north a corner is", mayBeNegative: true) is not { } y)
            {
                return;
            }

            s.Corners.Add(new CornerSyntax(x, y));
        }
        while (c.NextInList(n => n.AtNumber));
    }
}
