using Floorplan.Language.Parsing;

namespace Floorplan.Language.Details;

/// <summary>A detail written without its word, such as a size on the head line.</summary>
/// <param name="Starts">Whether it surely starts here, so that a list before it has ended.</param>
internal sealed record BareForm(Detail Detail, Func<Cursor, bool> Starts, Func<Cursor, object?> Read)
{
    /// <summary>
    /// Whether it is tried here when nothing else fits, so that a slip in it is told as one; null is <see cref="Starts"/>.
    /// </summary>
    public Func<Cursor, bool>? MayStart { get; init; }
}
