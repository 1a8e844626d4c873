using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>The day's target, crew, what is elsewhere on the site, breaks, rates and prices.</summary>
public sealed class DayStatement : Statement
{
    /// <summary><c>target 120 fish/h for 5 h</c></summary>
    public QuantitySyntax? Target { get; internal set; }

    public QuantitySyntax? Hours { get; internal set; }

    /// <summary><c>crew receiving 3, filleting 4</c></summary>
    public List<CrewSyntax> Crew { get; } = [];

    /// <summary><c>elsewhere 2 toilets, changing room</c>: on the same site, but not in this unit.</summary>
    public NumberSyntax? ToiletsElsewhere { get; internal set; }

    public bool ChangingElsewhere { get; internal set; }

    public QuantitySyntax? Breaks { get; internal set; }

    public QuantitySyntax? Changeover { get; internal set; }

    /// <summary><c>rate water 2.10 per m3</c> and <c>price fish 4.50</c>.</summary>
    public List<MoneySyntax> Money { get; } = [];
}

public sealed record CrewSyntax(NameSyntax Where, NumberSyntax Count, SourceSpan Span);

/// <param name="Kind"><c>rate</c> or <c>price</c>.</param>
public sealed record MoneySyntax(WordSyntax Kind, NameSyntax Of, NumberSyntax Amount, TextSyntax? Per, SourceSpan Span);
