using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>
/// What the welder reads beside the figures. Welds and order of work are common practice, no source; the engineer's word prevails.
/// </summary>
internal static class FrameNotes
{
    /// <summary>
    /// Leg of the fillet between frame and sheet: a container's sheet is 1.6 to 2 mm thick (from memory). Own assumption.
    /// </summary>
    private static readonly Length SheetLeg = Length.FromMillimetres(2);

    public static IEnumerable<string> Of(ShellKind kind, IReadOnlyList<CutOut> cuts, UnitSystem units)
    {
        yield return $"Open circles: where a row begins. In the row below a wall it is the {DatumWords.Of(kind)}: the outside corner at "
            + "the wall's west or south end, and the bottom. Figures go to the edges of an opening and to the middle of any other hole.";
        yield return "In the other rows it is the finished inside face of the wall and the finished floor, and figures go to the clear "
            + "opening. Its place in its room is from the room's west (W) or south (S) face, as on sheet 1.";
        yield return "Measure the real shell before cutting: "
            + $"{(kind == ShellKind.Container ? "posts, rails and corrugations" : "posts and rails")} are drawn at usual places.";
        if (cuts.Any(c => c.Frame is not null))
        {
            yield return "Hole = clear opening + frame. Frames are mitred; where the sill is low the posts stand square on "
                + $"{(kind == ShellKind.Shed ? "the slab or the sole plate" : "the bottom rail")}. Check both diagonals.";
        }

        if (kind == ShellKind.Shed)
        {
            yield return "Fix frames to posts and plates as the builder of the shed says.";
            yield break;
        }

        foreach (var section in cuts.Select(c => c.Frame?.Section).OfType<SteelSection>().Distinct())
        {
            yield return $"Welds, {section.Name(units)}: frame corners fillet leg z = {QuantityText.Length(section.Thickness, units)} "
                + "all round, ground flush on food sides; "
                + $"frame to sheet fillet leg z = {QuantityText.Length(SheetLeg, units)}, continuous outside, sealed inside. Own "
                + "assumption: the welder's procedure and the engineer's word prevail.";
        }
    }

    /// <summary>
    /// The frame is ready before the first cut, and one side is cut and welded at a time, so that the wall is never without either.
    /// </summary>
    public static KeyTable OrderOfWork(ShellKind kind) => new(
        "Order of work",
        ["No", "Step"],
        [.. Steps(kind).Select((step, i) => (IReadOnlyList<Cell>)[FormattableString.Invariant($"{i + 1}"), step])]);

    private static IEnumerable<string> Steps(ShellKind kind) => kind == ShellKind.Shed
        ?
        [
            "Have each hole and its frame checked by an engineer.",
            "Prop the plate over the hole before a post is touched.",
            "Make the frame. Set out from the datum and check from a second edge.",
            "Cut, fix the frame at once, then take away the props.",
        ]
        :
        [
            "Have each hole and its frame checked by an engineer.",
            kind == ShellKind.Trailer
                ? "Chock the wheels and set the trailer level on stands under its frame."
                : "Set the box level on its four corners.",
            "Brace roof rail and wall on both sides of the hole.",
            "Make the frame. Set out from the datum, and check from a second edge and by the diagonals.",
            "Cut along the head and weld the head in; then each post, then the sill.",
            "Take out the sheet, weld out, grind, coat bare steel on both sides.",
            "Take away the braces. Check that the shell's own doors still close.",
        ];
}
