using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>light filleting 540 lux, receiving 220 lux</c></summary>
public sealed class LightStatement : Statement
{
    public IReadOnlyList<RoomLightSyntax> Rooms => Values(LightDetails.Level);
}

public sealed record RoomLightSyntax(NameSyntax Room, QuantitySyntax? Level, SourceSpan Span);
