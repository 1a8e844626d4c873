using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>air supply filleting 300 m3/h, exhaust receiving</c></summary>
public sealed class AirStatement : Statement
{
    /// <summary>In the order written.</summary>
    public IReadOnlyList<RoomAirSyntax> Rooms => [.. Details.Select(d => d.Value).OfType<RoomAirSyntax>()];
}

public sealed record RoomAirSyntax(AirDirection Direction, NameSyntax Room, QuantitySyntax? Flow, SourceSpan Span);
