using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>accept waste-meets-product at d1 "after the day's work" by "the inspector"</c>. The rule is the name.</summary>
public sealed class AcceptStatement : Statement
{
    public List<NameSyntax> At { get; } = [];

    public TextSyntax? Reason { get; internal set; }

    public TextSyntax? By => Value(AcceptDetails.By);
}
