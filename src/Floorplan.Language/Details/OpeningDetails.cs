using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details;

/// <summary>What a door, hatch, window, opening, chute or vent may say.</summary>
public static class OpeningDetails
{
    public static Detail<SideSyntax> Wall { get; } = new(
        "wall", "the wall that it is in, as `north wall`", ["south wall", "north wall"], Forms.Wall);

    public static Detail<SizeSyntax> Size { get; } = new(
        "size",
        "its clear width and height",
        ["size 910 x 2055", "size 930 x 2055", "size 930 x 2035"],
        c => c.Size("a clear width", 2, 2))
    { Needed = Needed.ToldByBinder };

    public static Detail<PlaceTerm> Place { get; } = new(
        "place",
        "where it stands along the wall",
        ["place 510 from west", "place 530 from west", "place centred"],
        PlaceParser.Term)
    {
        BareRepeats = true,
        Needed = Needed.ToldByBinder,
    };

    public static Detail<LengthSyntax> Sill { get; } = Forms.Length(
        "sill", "the height of its bottom above the floor", "a height above the floor", "sill 15", "sill 25");

    public static Detail<NameSyntax> Swings { get; } = new(
        "swings", "where the leaf goes: `out`, `in` or a room", ["swings out", "swings receiving"], Swing);

    public static Detail<WordSyntax> Leaf { get; } = new(
        "slides", "what the leaf is, where it is no plain one", ["slides", "double", "strip curtain", "rolls up"], LeafWord)
    {
        Forms = ["slides", "double", "strip curtain", "rolls up"],
    };

    public static Detail<SideSyntax> Hinge { get; } = new(
        "hinge", "the end of the hole that the hinge is at", ["hinge west", "hinge east"], c => c.Side("the end that the hinge is at"));

    public static Detail<WordSyntax> ClosesItself { get; } = Forms.Mark("closes itself", "it closes by itself");

    public static Detail<WordSyntax> OpensFromInside { get; } = Forms.Mark(
        "opens from inside",
        "it opens from inside without a key or a tool");

    public static Detail<NumberSyntax> Steps { get; } = new(
        "steps",
        "how many equal rises lead up from the ground",
        ["steps 3", "steps 4"],
        c => c.Number("how many rises lead up from the ground"));

    public static Detail<WordSyntax> Ramp { get; } = Forms.Mark("ramp", "a ramp leads up to it");

    public static Detail<WordSyntax> Guard { get; } = Forms.Mark(
        "guard",
        "a rail beside the steps, or a bar across a door that nobody steps through");

    public static Detail<FrameSyntax> Frame { get; } = new(
        "frame",
        "the steel welded into the hole: `tube` or `angle` and its section, `none`, or words for the drawing",
        ["frame tube 51 x 52 x 4", "frame angle 51 x 52 x 4", "frame angle 55 x 52 x 4", "frame none", "frame \"stainless 304\""],
        FrameOf);

    public static Detail<LengthSyntax> Radius { get; } = Forms.Length(
        "radius", "of the corners of the hole in the steel", "the radius of the corners of the hole", "radius 22", "radius 27");

    public static IReadOnlyList<Detail> All { get; } =
        [Size, Place, Sill, Swings, Leaf, Hinge, ClosesItself, OpensFromInside, Steps, Ramp, Guard, Frame, Radius];

    private static NameSyntax? Swing(Cursor c)
    {
        c.Try("into");
        return c.Name("`out`, `in` or a room");
    }

    /// <summary>The first of its words: <c>strip</c> of <c>strip curtain</c>.</summary>
    private static WordSyntax LeafWord(Cursor c) => new(
        c.Before.Value.ToLowerInvariant() switch { "curtain" => "strip", "up" => "rolls", var word => word },
        c.Before);

    /// <summary><c>frame tube 50 x 50 x 3</c>, <c>frame angle 50 x 50 x 5</c>, <c>frame none</c>, or words for the drawing.</summary>
    private static FrameSyntax? FrameOf(Cursor c)
    {
        if (c.IsWord("none") || c.IsWord("tube") || c.IsWord("angle"))
        {
            var form = c.Word("`tube`, `angle` or `none`");
            return new FrameSyntax(form, form?.Text == "none" ? null : c.Size("the width of the section", 3, 3), null);
        }

        return c.Words("`tube` or `angle` and its section, `none`, or what the frame is made of") is { } note
            ? new FrameSyntax(null, null, note)
            : null;
    }
}
