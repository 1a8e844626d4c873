using Floorplan.Language.Quantities;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Values;

/// <summary>A name of a thing, as written.</summary>
public sealed record NameSyntax(string Text, SourceSpan Span);

/// <summary>A quoted text without its quotes, or a run of plain words where no quotes are needed.</summary>
public sealed record TextSyntax(string Text, SourceSpan Span);

/// <summary>A word of the trade, such as <c>cold</c> or <c>single-phase</c>.</summary>
public sealed record WordSyntax(string Text, SourceSpan Span);

public sealed record LengthSyntax(Length Value, SourceSpan Span);

public sealed record QuantitySyntax(Quantity Value, SourceSpan Span);

public sealed record NumberSyntax(decimal Value, SourceSpan Span);

public sealed record SideSyntax(Side Side, SourceSpan Span);

/// <summary>
/// <c>1200 x 600 x 900</c> or <c>round 900 x 850</c>: along, across, height. A round one has only a diameter and a height.
/// </summary>
public sealed record SizeSyntax(LengthSyntax Width, LengthSyntax? Depth, LengthSyntax? Height, bool Round, SourceSpan Span);
