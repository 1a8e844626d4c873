using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>switch k1 in cut, west wall, 500 from north, height 1100, two-way, circuit 2</c></summary>
public sealed class SwitchStatement : ServiceStatement
{
    public TermSyntax<Switching>? Switching => Value(SwitchDetails.Switching);

    public WordSyntax? Sealed => Value(ElectricDetails.Sealed);

    public TextSyntax? Circuit => Value(ElectricDetails.Circuit);

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(ElectricDetails.Rating).SelectMany(r => r.Amounts)];
}
