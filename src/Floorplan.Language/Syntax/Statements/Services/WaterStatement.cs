using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>water w1 cold hot in filleting, north wall, 1500 from west, height 1200, 20, backflow preventer</c></summary>
public sealed class WaterStatement : ServiceStatement
{
    public WordSyntax? Cold => Value(WaterDetails.Cold);

    public WordSyntax? Hot => Value(WaterDetails.Hot);

    /// <summary>The size of the pipe.</summary>
    public LengthSyntax? Size => Value(WaterDetails.Size);

    public IReadOnlyList<TermSyntax<BackflowGuard>> Guards
        => [.. Values(GuardDetails.VacuumBreaker), .. Values(GuardDetails.BackflowPreventer)];

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(WaterDetails.Rating).SelectMany(r => r.Amounts)];
}
