using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;
using Floorplan.Model.Shells;

namespace Floorplan.Sizing.Frames;

/// <summary>
/// The hole that is cut in the steel for one opening, from the datum of its wall: along from the west or south end of its outside face,
/// and up from the underside of the shell. In a shell with four walls that end is the steel datum's; each wall of an L has its own.
/// </summary>
/// <param name="Along">Of the west or south edge of the hole.</param>
/// <param name="Bottom">Of the lower edge of the hole.</param>
/// <param name="ClearAlong">Of the west or south edge of the clear opening.</param>
/// <param name="ClearBottom">Of the sill.</param>
/// <param name="Frame">The frame that stands in the hole; null without one.</param>
public sealed record CutOut(
    Opening Opening,
    ShellWall Wall,
    Length Along,
    Length Bottom,
    Length Width,
    Length Height,
    Length Radius,
    Length ClearAlong,
    Length ClearBottom,
    OpeningFrame? Frame)
{
    /// <summary>
    /// A hole whose sill is this low runs down to the bottom rail, on which its posts stand; as <c>cuts-frame</c> takes it.
    /// </summary>
    private static readonly Length StandsOnRail = Length.FromMillimetres(200);

    public Length Right => Along + Width;

    public Length Top => Bottom + Height;

    public static CutOut Of(Opening opening, ShellWall wall, Shell shell, UnitSystem units)
    {
        var clear =
            (wall.RunsEastWest ? Length.Min(opening.Start.X, opening.End.X) : Length.Min(opening.Start.Y, opening.End.Y)) - wall.From;
        var sill = opening.Sill - shell.DatumHeight;
        var radius = opening.Radius ?? Length.Zero;
        if (SectionOf(opening, units) is not { } section)
        {
            return new CutOut(opening, wall, clear, sill, opening.Width, opening.Height, radius, clear, sill, null);
        }

        // Down to what carries the wall when the sill is low: the bottom rail of a box, the slab of a shed.
        bool low = opening.Sill <= StandsOnRail;
        var bottom = low ? Length.Min(sill, RailTop(shell, wall)) : sill - section.Face;
        var head = sill + opening.Height + section.Face;
        var frame = new OpeningFrame(section, opening.Width + (section.Face * 2), head - bottom, HasSill: !low);
        return new CutOut(opening, wall, clear - section.Face, bottom, frame.Width, frame.Height, radius, clear, sill, frame);
    }

    /// <summary>A vent is screwed on by its flange; everything else gets a frame, unless the plan says otherwise. Own assumption.</summary>
    private static SteelSection? SectionOf(Opening opening, UnitSystem units) => opening.Frame switch
    {
        { Form: FrameForm.None } => null,
        { } wish => SteelSection.Of(wish),
        null => opening.Kind == OpeningKind.Vent ? null : SteelSection.Usual(units),
    };

    private static Length RailTop(Shell shell, ShellWall wall) => shell.Frame
        .Where(m => m.Wall == wall.Side && m.Part is FramePart.BottomRail or FramePart.Sill)
        .Select(m => m.Top - shell.DatumHeight)
        .DefaultIfEmpty(Length.Zero)
        .Max();
}
