using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details;

/// <summary>What a shell may say. Some details fit only some kinds of shell.</summary>
public static class ShellDetails
{
    private const string Shell = "shell";
    private const string Container = "container";
    private const string Trailer = "trailer";
    private const string Shed = "shed";

    public static Detail<LiningSyntax> Lining { get; } = new(
        "lining",
        "how far the finished walls, ceiling and floor stand in from the steel",
        [
            "lining walls 41 \"plywood\", ceiling 42, floor 31", "lining walls 43 \"plywood\", ceiling 42, floor 31",
            "lining walls 43 \"panel\", ceiling 44, floor 33",
            "lining walls 43 \"panel\", ceiling 44 \"panel\", floor 33",
            "lining walls 43 \"panel\", ceiling 44 \"panel\", floor 33 \"screed\""],
        LiningOf);

    /// <summary>A shed has none at an end, which the binder tells.</summary>
    public static Detail<SideSyntax> Doors { get; } = new(
        "doors", "the end with the cargo or ramp doors", ["doors east", "doors west"], c => c.Side("the end that the doors are in"));

    public static Detail<HitchSyntax> Hitch { get; } = new(
        "hitch",
        "the end with the coupling, how far it lies before the box, and what its plate allows it to carry",
        ["hitch west, 1210 ahead, 105 kg rated", "hitch west, 1230 ahead, 105 kg rated", "hitch west, 1230 ahead", "hitch west"],
        HitchOf)
    { Of = [Shell, Trailer] };

    public static Detail<AxlesSyntax> Axles { get; } = new(
        "axles",
        "how many axles, how far their middle lies from the coupling, and what the plate of one allows",
        [
            "axles 2, 4510 from hitch, 1350 kg each", "axles 2, 4530 from hitch, 1350 kg each", "axles 2, 4530 from hitch, 1370 kg each",
            "axles 3"],
        AxlesOf)
    {
        Of = [Shell, Trailer],
    };

    public static Detail<ShellWeightSyntax> Weight { get; } = new(
        "weight",
        "what the bare shell weighs, and what its plate allows in all",
        ["weight 1410 kg empty, 2710 kg rated", "weight 1430 kg empty, 2710 kg rated", "weight 1430 kg empty, 2730 kg rated"],
        WeightOf)
    {
        Of = [Shell, Trailer, Container],
    };

    public static Detail<LengthSyntax> Ground { get; } = new(
        "ground", "how far the ground lies below the finished floor", ["ground 610 below floor", "ground 630 below floor"], GroundOf);

    public static Detail<NumberSyntax> TrueNorth { get; } = new(
        "true north", "degrees clockwise from up the sheet", ["true north 21 degrees", "true north 23 degrees"], NorthOf);

    public static Detail<LengthSyntax> PostsEvery { get; } = Forms.Length(
        "posts every", "the spacing of the posts in the walls", "a spacing", "posts every 1210", "posts every 1430");

    public static Detail<LengthSyntax> Walls { get; } = Forms.Length(
        "walls", "the thickness of the bare wall", "the thickness of the walls", "walls 101", "walls 103");

    public static Detail<LengthSyntax> Eaves { get; } = new(
        "eaves",
        "the height of the eaves",
        ["eaves 2810", "eaves 2830"],
        c => c.Length("the height of the eaves"))
    {
        Of = [Shell, Shed],
        Needed = Needed.ToldByBinder,
    };

    public static Detail<IReadOnlyList<CornerSyntax>> Corners { get; } = new(
        "corners",
        "the outside corners of a shed, each east then north, in order round it",
        ["corners 0 0, 9100 0, 9100 5100, 0 5100", "corners 0 0, 9300 0, 9300 5100, 0 5100"],
        CornersOf)
    {
        Of = [Shell, Shed],
    };

    public static IReadOnlyList<Detail> All { get; } =
        [Lining, Doors, Hitch, Axles, Weight, Ground, TrueNorth, PostsEvery, Walls, Eaves, Corners];

    /// <summary>Points, each east then north.</summary>
    internal static IReadOnlyList<CornerSyntax> PointsOf(Cursor c, string what)
    {
        var points = new List<CornerSyntax>();
        do
        {
            if (c.Length($"how far east a {what} is", mayBeNegative: true) is not { } x
                || c.Length($"how far north a {what} is", mayBeNegative: true) is not { } y)
            {
                break;
            }

            points.Add(new CornerSyntax(x, y));
        }
        while (c.NextInList(n => n.AtNumber));
        return points;
    }

    private static IReadOnlyList<CornerSyntax> CornersOf(Cursor c) => PointsOf(c, "corner");

    /// <summary>
    /// The words of its list come before a detail of the same word: <c>walls</c> after <c>lining ceiling 40,</c> is the lining of the
    /// walls.
    /// </summary>
    private static LiningSyntax LiningOf(Cursor c)
    {
        var lining = new LiningSyntax(null, null, null, null);
        bool Goes(Cursor n) => (n.IsWord("walls") && lining.Walls is null) || n.IsWord("ceiling") || n.IsWord("floor");
        do
        {
            var start = c.Here;
            if (c.Word("what is lined", "walls", "ceiling", "floor") is not { } what)
            {
                break;
            }

            if (what.Text switch { "walls" => lining.Walls, "ceiling" => lining.Ceiling, _ => lining.Floor } is not null)
            {
                c.Error("said-twice", $"the lining of the {what.Text} is said twice", start, "keep one of them");
            }

            var thickness = c.Length("a thickness");
            lining = what.Text switch
            {
                "walls" => lining with { Walls = thickness, WallsOf = c.TryText() },
                "ceiling" => lining with { Ceiling = thickness, CeilingOf = c.TryText() },
                _ => lining with { Floor = thickness, FloorOf = c.TryText() },
            };
        }
        while (c.NextPart(Goes));
        return lining;
    }

    private static HitchSyntax? HitchOf(Cursor c)
    {
        if (c.Side("the end that the hitch is at") is not { } end)
        {
            return null;
        }

        var hitch = new HitchSyntax(end, null, null);
        while (c.NextInList(n => n.AtNumber && (n.PhraseHolds("ahead") || n.PhraseHolds("rated"))))
        {
            if (c.PhraseHolds("ahead"))
            {
                hitch = hitch with { Ahead = c.Length("how far the coupling lies before the box") };
                c.Expect("ahead");
            }
            else
            {
                hitch = hitch with { Rated = c.Quantity("what the coupling may carry", QuantityKind.Mass) };
                c.Expect("rated");
            }
        }

        return hitch;
    }

    private static AxlesSyntax? AxlesOf(Cursor c)
    {
        if (c.Number("a number of axles") is not { } count)
        {
            return null;
        }

        var axles = new AxlesSyntax(count, null, null);
        while (c.NextInList(n => n.AtNumber && (n.PhraseHolds("hitch") || n.PhraseHolds("each"))))
        {
            if (c.PhraseHolds("hitch"))
            {
                axles = axles with { FromHitch = c.Length("how far the middle of the axles lies from the coupling") };
                _ = c.Expect("from") && c.Expect("hitch");
            }
            else
            {
                axles = axles with { Rated = c.Quantity("what one axle may carry", QuantityKind.Mass) };
                c.Expect("each");
            }
        }

        return axles;
    }

    private static ShellWeightSyntax? WeightOf(Cursor c)
    {
        (QuantitySyntax? empty, QuantitySyntax? rated) = (null, null);
        do
        {
            var weight = c.Quantity("a weight", QuantityKind.Mass);
            if (weight is null || c.Word("what it is", "empty", "rated") is not { } what)
            {
                break;
            }

            (empty, rated) = what.Text == "empty" ? (weight, rated) : (empty, weight);
        }
        while (c.NextInList(n => n.AtNumber && (n.PhraseHolds("empty") || n.PhraseHolds("rated"))));
        return empty is null && rated is null ? null : new ShellWeightSyntax(empty, rated);
    }

    private static LengthSyntax? GroundOf(Cursor c)
    {
        var below = c.Length("how far the ground lies below the floor");
        _ = below is not null && c.Expect("below") && c.Expect("floor");
        return below;
    }

    private static NumberSyntax? NorthOf(Cursor c)
    {
        var degrees = c.Number("degrees clockwise from up the sheet");
        _ = degrees is not null && c.Try("degrees");
        return degrees;
    }
}
