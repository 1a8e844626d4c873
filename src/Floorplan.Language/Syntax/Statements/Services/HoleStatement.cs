using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary>
/// A hole for a pipe, a cable or a fan: <c>hole fan "Exhaust fan" roof in receiving, 1200 from west, centred, 400 x 400</c>
/// </summary>
public sealed class HoleStatement : ServiceStatement
{
    public TermSyntax<HoleThrough>? Through => Value(HoleDetails.Through);

    /// <summary>Its diameter, or its two sides.</summary>
    public SizeSyntax? Size => Value(HoleDetails.Size);
}
