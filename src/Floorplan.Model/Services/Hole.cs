using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A hole for a pipe, a cable or a fan.</summary>
public sealed record Hole : ServicePoint, ISizedPoint
{
    /// <summary>Null in a wall.</summary>
    public HoleThrough? Through { get; init; }

    /// <summary>Its diameter, or the side west to east or along the wall; null when not said.</summary>
    public Length? Size { get; init; }

    /// <summary>Of a rectangular hole the side north to south, in a wall the height; null when round or not said.</summary>
    public Length? SizeAcross { get; init; }

    public override string Kind => "hole";

    public override IEnumerable<string> Terms => Through is { } through ? [TermWord.Of(through)] : [];
}
