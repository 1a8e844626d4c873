using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>hose hz1 on w1, 7.5 m, vacuum breaker</c></summary>
public sealed class HoseStatement : ServiceStatement
{
    /// <summary>The water point that it hangs on.</summary>
    public NameSyntax? On => Value(HoseDetails.On);

    public LengthSyntax? Length => Value(HoseDetails.Length);

    public IReadOnlyList<TermSyntax<BackflowGuard>> Guards
        => [.. Values(GuardDetails.VacuumBreaker), .. Values(GuardDetails.BackflowPreventer)];

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(HoseDetails.Rating).SelectMany(r => r.Amounts)];
}
