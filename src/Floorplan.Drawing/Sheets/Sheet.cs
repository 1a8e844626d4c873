using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Sheets;

/// <summary>One sheet of the set: its number and name, and what is on it.</summary>
public abstract class Sheet
{
    public abstract int Number { get; }

    /// <summary>File name without its number, such as <c>general-arrangement</c>.</summary>
    public abstract string Name { get; }

    public abstract string Title { get; }

    /// <param name="head">Title block, revisions, marks and cautions, the same on all sheets.</param>
    public abstract SheetContent Content(SheetRequest request, SheetContent head);
}
