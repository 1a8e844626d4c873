using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>panel p1 in holding, south wall, 1500 from west, 100 A 230 V single-phase</c></summary>
public sealed class PanelStatement : ServiceStatement
{
    public TermSyntax<Phases>? Phases => Value(ElectricDetails.Phases);

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(ElectricDetails.Rating).SelectMany(r => r.Amounts)];
}
