using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Values;

/// <summary>One thing said about where something stands. It fixes one axis, or both.</summary>
public abstract record PlaceTerm(SourceSpan Span);

/// <summary><c>against north wall</c></summary>
public sealed record AgainstTerm(SideSyntax Wall, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>300 from west</c>: from that finished face of the room.</summary>
public sealed record FromTerm(LengthSyntax Distance, SideSyntax Face, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>at 1200, 300</c>: the south-west corner, from the room's south-west corner.</summary>
public sealed record AtTerm(LengthSyntax X, LengthSyntax Y, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>corner north-west</c></summary>
public sealed record CornerTerm(Side NorthOrSouth, Side EastOrWest, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>centred</c> in the room, on the axis that nothing else fixes.</summary>
public sealed record CentredTerm(SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>centred on h1</c></summary>
public sealed record CentredOnTerm(NameSyntax Other, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>east of gutting gap 100</c>; no gap is a gap of 0.</summary>
public sealed record BesideTerm(SideSyntax Direction, NameSyntax Other, LengthSyntax? Gap, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>in line with bench</c>: same centre line, on the one axis that nothing else fixes.</summary>
public sealed record InLineTerm(NameSyntax Other, SourceSpan Span) : PlaceTerm(Span);

/// <summary><c>flush south with bench</c>: south edges in line.</summary>
public sealed record FlushTerm(SideSyntax Edge, NameSyntax Other, SourceSpan Span) : PlaceTerm(Span);
