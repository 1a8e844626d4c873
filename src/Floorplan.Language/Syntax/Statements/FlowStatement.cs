using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>One stream; each detail line is a chain of stops.</summary>
public sealed class FlowStatement : Statement
{
    /// <summary><c>product</c>, <c>waste</c>, <c>people</c>, <c>supplies</c> or <c>returns</c>.</summary>
    public WordSyntax? Stream { get; internal set; }

    /// <summary>The one product that goes this way; null for all that have no flow of their own.</summary>
    public NameSyntax? Product { get; internal set; }

    public IReadOnlyList<ChainSyntax> Chains => Values(FlowDetails.Line);
}

/// <summary><c>gutting -> h1 -> chill  by trolley 600 wide 900 long, after work</c></summary>
/// <param name="Carriage"><c>hand</c>, <c>trolley</c>, <c>rail</c>, <c>conveyor</c>, <c>chute</c> or <c>pump</c>; null when not
/// said.</param>
/// <param name="Period"><c>before</c>, <c>during</c> or <c>after</c>; null when not said.</param>
public sealed record ChainSyntax(
    IReadOnlyList<NameSyntax> Stops, WordSyntax? Carriage, LengthSyntax? Width, LengthSyntax? Length, WordSyntax? Period, SourceSpan Span)
{
    /// <summary>What one load carried by hand weighs: <c>by hand 12 kg</c>; null when not said.</summary>
    public QuantitySyntax? Load { get; init; }

    /// <summary><c>live</c> or <c>liquid</c>, after the weight; null for a load that keeps still.</summary>
    public WordSyntax? LoadKind { get; init; }

    /// <summary>How much goes at a time: <c>takes 40 fish</c>; null when not said.</summary>
    public QuantitySyntax? Takes { get; init; }

    /// <summary>How many go this way: <c>2 trolleys</c>; null when not said.</summary>
    public NumberSyntax? Trolleys { get; init; }
}
