using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>door</c>, <c>hatch</c>, <c>window</c>, <c>opening</c>, <c>chute</c> or <c>vent</c>: the keyword says which.</summary>
public sealed class OpeningStatement : Statement
{
    /// <summary>A room, or <c>outside</c>.</summary>
    public NameSyntax? First { get; internal set; }

    public NameSyntax? Second { get; internal set; }

    public SideSyntax? Wall => Value(OpeningDetails.Wall);

    public IReadOnlyList<PlaceTerm> Place => Values(OpeningDetails.Place);

    public SizeSyntax? Size => Value(OpeningDetails.Size);

    public LengthSyntax? Sill => Value(OpeningDetails.Sill);

    /// <summary><c>swings</c>, <c>double</c>, <c>slides</c>, <c>strip</c> or <c>rolls</c>; null when not said.</summary>
    public WordSyntax? Leaf => Value(OpeningDetails.Leaf) ?? (SwingsTo is { } to ? new WordSyntax("swings", to.Span) : null);

    /// <summary><c>out</c>, <c>in</c> or a room.</summary>
    public NameSyntax? SwingsTo => Value(OpeningDetails.Swings);

    public SideSyntax? Hinge => Value(OpeningDetails.Hinge);

    public bool ClosesItself => Value(OpeningDetails.ClosesItself) is not null;

    public bool OpensFromInside => Value(OpeningDetails.OpensFromInside) is not null;

    public NumberSyntax? Steps => Value(OpeningDetails.Steps);

    public bool Ramp => Value(OpeningDetails.Ramp) is not null;

    public bool Guard => Value(OpeningDetails.Guard) is not null;

    public FrameSyntax? Frame => Value(OpeningDetails.Frame);

    public LengthSyntax? Radius => Value(OpeningDetails.Radius);
}

/// <param name="Form"><c>tube</c>, <c>angle</c> or <c>none</c>; null when only words are said.</param>
/// <param name="Size">Two sides and the thickness of the section.</param>
/// <param name="Note">Words for the drawing.</param>
public sealed record FrameSyntax(WordSyntax? Form, SizeSyntax? Size, TextSyntax? Note);
