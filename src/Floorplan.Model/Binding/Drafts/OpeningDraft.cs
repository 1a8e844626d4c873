using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Openings;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about an opening.</summary>
internal sealed record OpeningDraft(string Id, OpeningKind Kind, NameRef First, NameRef Second, SourceSpan Span)
{
    public string Label { get; init; } = "";

    public Side? Wall { get; init; }

    public SourceSpan WallSpan { get; init; }

    public IReadOnlyList<PlaceTerm> Place { get; init; } = [];

    public Length Width { get; init; }

    public Length Height { get; init; }

    public Length? Sill { get; init; }

    public SwingKind? Swing { get; init; }

    /// <summary>A room, <c>outside</c>, <c>out</c> or <c>in</c>; null takes the usual way.</summary>
    public NameRef? SwingsTo { get; init; }

    /// <summary>The end of the hole that the hinge is at; null takes the end nearer to a corner.</summary>
    public Side? Hinge { get; init; }

    public bool ClosesItself { get; init; }

    public bool OpensFromInside { get; init; }

    public int? Steps { get; init; }

    public bool Ramp { get; init; }

    public bool Guard { get; init; }

    public FrameWish? Frame { get; init; }

    public string FrameNote { get; init; } = "";

    public Length? Radius { get; init; }
}
