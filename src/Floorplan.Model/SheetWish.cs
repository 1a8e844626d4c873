using Floorplan.Language.Text;

namespace Floorplan.Model;

/// <summary>A <c>sheet</c> statement: paper and scale where the default is not wanted.</summary>
/// <param name="Sheet">Sheet number, or 0 for all sheets.</param>
/// <param name="Paper">Such as <c>A3</c> or <c>11 x 17 in</c>; null keeps the default.</param>
/// <param name="Scale">The denominator of 1:n; null keeps the default.</param>
public sealed record SheetWish(int Sheet, string? Paper, double? Scale, SourceSpan Span);
