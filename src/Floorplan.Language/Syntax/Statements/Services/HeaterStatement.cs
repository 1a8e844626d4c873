using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>heater wh1 in receiving, west wall, 300 from north, 9 kW 150 L, tank</c></summary>
public sealed class HeaterStatement : ServiceStatement
{
    public TermSyntax<HeaterForm>? Form => Value(HeaterDetails.Form);

    public TermSyntax<Phases>? Phases => Value(ElectricDetails.Phases);

    public TextSyntax? Circuit => Value(ElectricDetails.Circuit);

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(HeaterDetails.Rating).SelectMany(r => r.Amounts)];
}
