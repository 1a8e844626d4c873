using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;

namespace Floorplan.Model.Shells;

/// <summary>What any shell statement may say beside its size.</summary>
public sealed record ShellNotes
{
    public Linings Linings { get; init; } = Linings.None;

    public Length? GroundBelowFloor { get; init; }

    public Side? DoorEnd { get; init; }

    public double? TrueNorth { get; init; }

    /// <summary>Thickness of the bare wall; null takes the usual one of the kind.</summary>
    public Length? WallThickness { get; init; }

    /// <summary>Distance between posts along the walls; null for corner posts only.</summary>
    public Length? PostSpacing { get; init; }

    public ShellLoads Loads { get; init; } = ShellLoads.None;

    public SourceSpan Span { get; init; }
}
