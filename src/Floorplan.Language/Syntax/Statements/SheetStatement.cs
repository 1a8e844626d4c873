using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>sheet 1</c> or <c>sheet all</c>, with <c>paper A2</c>, <c>scale 1:25</c>, <c>shows …</c>.</summary>
public sealed class SheetStatement : Statement
{
    /// <summary>Null for all sheets.</summary>
    public NumberSyntax? Number { get; internal set; }

    public TextSyntax? Paper => Value(SheetDetails.Paper);

    /// <summary>The denominator of 1:n.</summary>
    public NumberSyntax? Scale => Value(SheetDetails.Scale);

    public IReadOnlyList<WordSyntax> Shows => Value(SheetDetails.Shows) ?? [];
}
