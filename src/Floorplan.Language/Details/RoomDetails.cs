using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details;

/// <summary>What a room may say.</summary>
public static class RoomDetails
{
    private static readonly string[] Surfaces = ["floor", "walls", "ceiling", "base"];

    public static Detail<SliceSyntax> Slice { get; } = new(
        "from",
        "the slice of the shell that it takes, to the middle lines of its partitions",
        ["from west to 3610", "from west to 3630"],
        SliceOf)
    {
        Group = "shape",
        Needed = Needed.ToldByBinder,
    };

    public static Detail<SizeSyntax> Area { get; } = new(
        "area",
        "its sides as a rectangle, west to east and south to north",
        ["area 1310 x 1110", "area 1330 x 1110"],
        c => c.Size("the room's width from west to east", 2, 2))
    {
        Group = "shape",
        Needed = Needed.ToldByBinder,
    };

    public static Detail<NameSyntax> In { get; } = new(
        "in",
        "the room that a rectangle is carved from",
        ["in filleting", "in receiving"],
        Forms.Room);

    public static Detail<PlaceTerm> Place { get; } = new(
        "place",
        "where a rectangle stands",
        ["place corner north-west", "place corner south-west"],
        PlaceParser.Term)
    { BareRepeats = true };

    public static Detail<QuantitySyntax> Keep { get; } = new(
        "keep",
        "the temperature that it keeps",
        ["keep 2 C", "keep -4 C"],
        c => c.Quantity("a temperature", QuantityKind.Temperature));

    public static Detail<QuantitySyntax> Cooling { get; } = Forms.Quantity(
        "cooling", "what its cooling unit carries away", "a power", [QuantityKind.Power], "cooling 2.3 kW", "cooling 3.1 kW");

    public static Detail<QuantitySyntax> Light { get; } = Forms.Quantity(
        "light", "its light level", "a light level", [QuantityKind.Illuminance], "light 221 lux", "light 543 lux");

    public static Detail<LampsSyntax> Lamps { get; } = new(
        "lamps",
        "its lamps: how many, the light that one gives, and what one draws",
        ["lamps 6 x 4100 lm 35 W", "lamps 4 x 3100 lm"],
        LampsOf);

    public static Detail<WordSyntax> Washed { get; } = new(
        "washed down",
        "the floor is hosed, or it is not",
        ["washed down", "kept dry"],
        c => new WordSyntax(c.Before.Value.ToLowerInvariant(), c.Before))
    {
        Forms = ["washed down", "kept dry"],
    };

    public static Detail<IReadOnlyList<FinishSyntax>> Finish { get; } = new(
        "finish",
        "what floor, walls, ceiling and the base of the walls are finished with",
        ["finish floor \"resin\", walls \"panel\"", "finish floor \"tiles\", walls \"panel\"", "finish ceiling \"panel\", base \"curb\""],
        FinishesOf)
    {
        Forms = ["finish", "finishes"],
        Repeatable = true,
        Clashes = (a, b) => a.Any(f => b.Any(g => g.Surface.Text == f.Surface.Text)),
    };

    public static IReadOnlyList<Detail> All { get; } = [Slice, Area, Place, Keep, Cooling, Light, Lamps, Washed, Finish];

    private static LampsSyntax? LampsOf(Cursor c)
    {
        if (c.Whole("how many lamps", 1, Bounds.MostLamps) is not { } count || !c.Expect("x")
            || c.Quantity("the light that one gives", QuantityKind.LuminousFlux) is not { } flux)
        {
            return null;
        }

        var power = c.AtNumber ? c.Quantity("what one draws", QuantityKind.Power) : null;
        return new LampsSyntax((int)count.Value, flux, power);
    }

    private static SliceSyntax? SliceOf(Cursor c)
    {
        var from = Bound(c);
        return from is null ? null : new SliceSyntax(from, c.Expect("to") ? Bound(c) : null);
    }

    private static SliceBoundSyntax? Bound(Cursor c)
    {
        var start = c.Here;
        if (c.AtSide())
        {
            return new SliceBoundSyntax(c.Side("a side"), null, start);
        }

        return c.Length("a side or a distance") is { } distance ? new SliceBoundSyntax(null, distance, start.To(c.Before)) : null;
    }

    private static IReadOnlyList<FinishSyntax> FinishesOf(Cursor c)
    {
        var finishes = new List<FinishSyntax>();
        do
        {
            if (c.Word("a surface", Surfaces) is not { } surface || c.Words("a finish") is not { } text)
            {
                break;
            }

            if (finishes.Exists(f => f.Surface.Text == surface.Text))
            {
                c.Error("said-twice", $"the finish of the {surface.Text} is said twice", surface.Span, "keep one of them");
            }

            finishes.Add(new FinishSyntax(surface, text));
        }
        while (c.NextPart(n => Surfaces.Any(w => n.IsWord(w))));
        return finishes;
    }
}
