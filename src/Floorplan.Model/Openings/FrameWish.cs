using Floorplan.Language.Quantities;

namespace Floorplan.Model.Openings;

/// <summary>What a plan says of the frame that is welded into a hole in the shell.</summary>
/// <param name="Face">Side of the section that shows from outside; the hole in the steel is larger by it.</param>
/// <param name="Depth">Side of the section through the wall.</param>
public sealed record FrameWish(FrameForm Form, Length Face, Length Depth, Length Thickness)
{
    public static FrameWish None { get; } = new(FrameForm.None, Length.Zero, Length.Zero, Length.Zero);
}

public enum FrameForm
{
    None,
    Tube,
    Angle,
}
