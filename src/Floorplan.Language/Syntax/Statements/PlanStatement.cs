using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>Title, number, revisions, units, code, products and people; fills the title block. The title is the label.</summary>
public sealed class PlanStatement : Statement
{
    public TextSyntax? Number { get; internal set; }

    public List<RevisionSyntax> Revisions { get; } = [];

    public UnitSystem? Units { get; internal set; }

    /// <summary><c>us</c>, <c>eu</c> or <c>none</c>.</summary>
    public WordSyntax? Code { get; internal set; }

    public List<ProductSyntax> Products { get; } = [];

    public PeopleSyntax? People { get; internal set; }

    public TextSyntax? Owner { get; internal set; }

    public TextSyntax? Site { get; internal set; }

    public TextSyntax? DrawnBy { get; internal set; }

    public TextSyntax? CheckedBy { get; internal set; }

    public List<TextSyntax> Notes { get; } = [];
}

/// <summary><c>revision A, 2026-11-25, "First issue"</c></summary>
public sealed record RevisionSyntax(TextSyntax Mark, TextSyntax? Date, TextSyntax? Text, SourceSpan Span);

/// <summary><c>people women 10 to 90 %</c>: who, the smallest and the tallest planned for, each optional.</summary>
public sealed record PeopleSyntax(WordSyntax? Who, NumberSyntax? Least, QuantitySyntax? Most, SourceSpan Span)
{
    /// <summary><see cref="Most"/> without the noise of a division by a hundred.</summary>
    public double? MostPercent => Most is null ? null : Math.Round(Most.Value.Base * 100, 6);
}

/// <summary><c>product fish, 0.9 kg each</c></summary>
public sealed record ProductSyntax(NameSyntax Unit, QuantitySyntax? WeightEach, SourceSpan Span);
