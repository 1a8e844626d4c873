using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>limit hand-sink-too-far 4 m "agreed with the inspector on site"</c>. The rule is the name.</summary>
public sealed class LimitStatement : Statement
{
    /// <summary>The figure read as a length, when it can be one (a bare number is in the plan's units).</summary>
    public LengthSyntax? Length { get; internal set; }

    /// <summary>The figure read as another quantity, when it can be one (a bare number is a count).</summary>
    public QuantitySyntax? Quantity { get; internal set; }

    public TextSyntax? Reason { get; internal set; }
}
