using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>Title, number, revisions, units, code, products and people; fills the title block. The title is the label.</summary>
public sealed class PlanStatement : Statement
{
    public TextSyntax? Number => Value(PlanDetails.Number);

    public IReadOnlyList<RevisionSyntax> Revisions => Values(PlanDetails.Revision);

    public UnitSystem? Units => Value(PlanDetails.Units) is { } units ? units.Text == "feet" ? UnitSystem.Feet : UnitSystem.Metric : null;

    /// <summary><c>us</c>, <c>eu</c> or <c>none</c>.</summary>
    public WordSyntax? Code => Value(PlaceDetails.Code);

    /// <summary>In small letters: <c>de</c>, <c>us-wa</c>.</summary>
    public WordSyntax? Country => Value(PlaceDetails.Country);

    public IReadOnlyList<WordSyntax> Trades => Value(PlaceDetails.Trade)?.All ?? [];

    /// <summary><c>inspected</c>, <c>food</c>, <c>retail</c>, <c>milk</c> or <c>exempt</c>.</summary>
    public WordSyntax? Plant => Value(PlaceDetails.Plant);

    public IReadOnlyList<ProductSyntax> Products => Values(PlanDetails.Product);

    public PeopleSyntax? People => Value(PlanDetails.People);

    public ClimateSyntax? Climate => Value(PlanDetails.Climate);

    public MainsSyntax? Mains => Value(PlanDetails.Mains);

    public QuantitySyntax? Wind => Value(PlanDetails.Wind);

    public TextSyntax? Rates => Value(PlanDetails.Rates);

    public TextSyntax? Owner => Value(PlanDetails.Owner);

    public TextSyntax? Site => Value(PlanDetails.Site);

    public TextSyntax? DrawnBy => Value(PlanDetails.DrawnBy);

    public TextSyntax? CheckedBy => Value(PlanDetails.CheckedBy);

    public IReadOnlyList<TextSyntax> Notes => Values(PlanDetails.Note);
}

/// <summary><c>revision A, 2026-11-25, "First issue"</c></summary>
public sealed record RevisionSyntax(TextSyntax Mark, TextSyntax? Date, TextSyntax? Text, SourceSpan Span);

/// <summary><c>trade poultry, red meat</c></summary>
public sealed record TradesSyntax(IReadOnlyList<WordSyntax> All, SourceSpan Span);

/// <summary><c>people women 10 to 90 %</c>: who, the smallest and the tallest planned for, each optional.</summary>
public sealed record PeopleSyntax(WordSyntax? Who, NumberSyntax? Least, QuantitySyntax? Most, SourceSpan Span)
{
    /// <summary><see cref="Most"/> without the noise of a division by a hundred.</summary>
    public double? MostPercent => Most is null ? null : Math.Round(Most.Value.Base * 100, 6);
}

/// <summary><c>climate -12 C, 34 C 40 %</c>: the winter day, the summer day and its humidity, the latter two optional.</summary>
public sealed record ClimateSyntax(QuantitySyntax Winter, QuantitySyntax? Summer, QuantitySyntax? Humidity, SourceSpan Span);

/// <summary><c>mains 3 bar, 12 C</c>: the temperature is optional.</summary>
public sealed record MainsSyntax(QuantitySyntax Pressure, QuantitySyntax? Temperature, SourceSpan Span);

/// <summary><c>product fish, 0.9 kg each</c></summary>
public sealed record ProductSyntax(NameSyntax Unit, QuantitySyntax? WeightEach, SourceSpan Span);
