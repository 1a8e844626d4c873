using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary><c>drain fd1 floor in filleting, 2400 from west, centred, 100, outlet 150 below floor, runs to fd2</c></summary>
public sealed class DrainStatement : ServiceStatement
{
    public TermSyntax<DrainForm>? Form => Value(DrainDetails.Form);

    /// <summary>The size of the waste pipe.</summary>
    public LengthSyntax? Size => Value(DrainDetails.Size);

    /// <summary><c>outlet 150 below floor</c></summary>
    public LengthSyntax? OutletBelow => Value(DrainDetails.OutletBelow);

    /// <summary>The drain that its line comes to next: <c>runs to fd2</c></summary>
    public NameSyntax? RunsTo => Value(DrainDetails.RunsTo);

    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(DrainDetails.Rating).SelectMany(r => r.Amounts)];
}
