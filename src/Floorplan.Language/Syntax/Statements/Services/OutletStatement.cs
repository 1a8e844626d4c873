using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>outlet x1 in filleting, north wall, 900 from east, height 1100, 16 A 230 V, gfci, circuit 3</c></summary>
public sealed class OutletStatement : ServiceStatement
{
    public TermSyntax<Phases>? Phases => Value(ElectricDetails.Phases);

    public TermSyntax<FaultGuard>? Guard => Value(OutletDetails.Guard);

    public WordSyntax? Sealed => Value(ElectricDetails.Sealed);

    public TextSyntax? Circuit => Value(ElectricDetails.Circuit);

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(ElectricDetails.Rating).SelectMany(r => r.Amounts)];
}
