using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>light filleting 540 lux</c> or <c>air supply filleting, exhaust receiving</c>: the keyword says which.</summary>
public sealed class RoomServiceStatement : Statement
{
    public IReadOnlyList<RoomServiceSyntax> Rooms => [.. Details.Select(d => d.Value).OfType<RoomServiceSyntax>()];
}

/// <param name="Direction"><c>supply</c> or <c>exhaust</c> for air; null for light.</param>
public sealed record RoomServiceSyntax(WordSyntax? Direction, NameSyntax Room, QuantitySyntax? Amount, SourceSpan Span);
