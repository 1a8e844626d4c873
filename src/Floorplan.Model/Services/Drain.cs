using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A drain in the floor, or the waste of a sink.</summary>
public sealed record Drain : RatedPoint, ISizedPoint
{
    public DrainForm Form { get; init; }

    /// <summary>Of the waste pipe; null when not said.</summary>
    public Length? Size { get; init; }

    /// <summary>Depth of the outlet below the finished floor; null when not said.</summary>
    public Length? OutletBelow { get; init; }

    /// <summary>The id of the drain that its line comes to next; null when not said.</summary>
    public string? RunsToId { get; init; }

    public override string Kind => "drain";

    public override IEnumerable<string> Terms => [TermWord.Of(Form)];
}
