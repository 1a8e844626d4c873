using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>sheet 1</c> or <c>sheet all</c>, with <c>paper A2</c>, <c>scale 1:25</c>, <c>shows …</c>.</summary>
public sealed class SheetStatement : Statement
{
    /// <summary>Null for all sheets.</summary>
    public NumberSyntax? Number { get; internal set; }

    public TextSyntax? Paper { get; internal set; }

    /// <summary>The denominator of 1:n.</summary>
    public NumberSyntax? Scale { get; internal set; }

    public List<WordSyntax> Shows { get; } = [];
}
