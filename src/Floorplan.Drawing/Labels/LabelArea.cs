using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>A thing on paper that a text of another thing had better not stand in.</summary>
/// <param name="Group">Labels of this group are its own.</param>
/// <param name="Rings">Without their repeated last points.</param>
public sealed record LabelArea(string Group, LabelAreaKind Kind, IReadOnlyList<IReadOnlyList<PaperPoint>> Rings);

public enum LabelAreaKind
{
    /// <summary>Keeps out all that points to a place in another room, and its leaders.</summary>
    Room,

    /// <summary>Keeps out those that are <see cref="LabelRequest.OffOthers"/>.</summary>
    Thing,
}
