using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>Chooses paper and scale, lays out frame, views and text space, and places all labels.</summary>
public static class SheetComposer
{
    public static SheetScene Compose(SheetContent content) => throw new NotImplementedException();
}
