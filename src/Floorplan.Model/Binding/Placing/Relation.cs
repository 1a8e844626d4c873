using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Placing;

/// <summary>One thing said about a place. It fixes one axis or both; see <see cref="AxisChoice"/>.</summary>
internal abstract record Relation(SourceSpan Span);

internal sealed record Against(Side Wall, SourceSpan Span) : Relation(Span);

internal sealed record FromFace(Length Distance, Side Face, SourceSpan Span) : Relation(Span);

internal sealed record AtPoint(Length X, Length Y, SourceSpan Span) : Relation(Span);

internal sealed record InCorner(Side NorthOrSouth, Side EastOrWest, SourceSpan Span) : Relation(Span);

/// <summary>Centred in the room on the axis that nothing else fixes.</summary>
internal sealed record Centred(SourceSpan Span) : Relation(Span);

/// <summary>A relation to another thing, named in the text at <paramref name="OtherSpan"/>.</summary>
internal abstract record ToOther(string Other, SourceSpan OtherSpan, SourceSpan Span) : Relation(Span);

internal sealed record Beyond(Side Direction, Length Gap, string Other, SourceSpan OtherSpan, SourceSpan Span) : ToOther(Other, OtherSpan, Span);

internal sealed record Flush(Side Edge, string Other, SourceSpan OtherSpan, SourceSpan Span) : ToOther(Other, OtherSpan, Span);

/// <summary>Same centre as another thing: along the wall of an opening, else on every axis that nothing else fixes.</summary>
internal sealed record CentredOn(string Other, SourceSpan OtherSpan, SourceSpan Span) : ToOther(Other, OtherSpan, Span);

/// <summary>Same centre line as another thing: along the wall of an opening, else on the one axis that nothing else fixes.</summary>
internal sealed record InLineWith(string Other, SourceSpan OtherSpan, SourceSpan Span) : ToOther(Other, OtherSpan, Span);
