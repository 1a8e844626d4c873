using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>A room before it has a place: what its statement says about its shape. One of slice and area is set.</summary>
internal sealed record RoomDraft(string Id, SourceSpan Span)
{
    public Slice? Slice { get; init; }

    public RoomArea? Area { get; init; }
}

/// <summary>A slice of the shell between centre lines of partitions; null bounds are the shell's own faces.</summary>
internal sealed record Slice(Length? West, Length? East, Length? South, Length? North, SourceSpan Span)
{
    public Box Of(Box shell) => new(West ?? shell.West, South ?? shell.South, East ?? shell.East, North ?? shell.North);
}

/// <summary>A rectangle between finished faces, in a room (carved out of it) or free in the shell.</summary>
/// <param name="In">The room that it is carved from, or null.</param>
/// <param name="Place">From the faces of that room or of the shell, or from other rooms.</param>
internal sealed record RoomArea(Length Width, Length Depth, NameSyntax? In, IReadOnlyList<PlaceTerm> Place, SourceSpan Span);
