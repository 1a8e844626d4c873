using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>The day's target, crew, what is elsewhere on the site, breaks, rates and prices.</summary>
public sealed class DayStatement : Statement
{
    /// <summary>In the order in which they are made.</summary>
    public IReadOnlyList<TargetSyntax> Targets => Values(DayDetails.Target);

    public IReadOnlyList<CrewSyntax> Crew => Value(DayDetails.Crew) ?? [];

    public NumberSyntax? ToiletsElsewhere => Value(DayDetails.Elsewhere)?.Toilets;

    public bool ChangingElsewhere => Value(DayDetails.Elsewhere)?.Changing == true;

    public QuantitySyntax? Breaks => Value(DayDetails.Breaks);

    public ArrivalSyntax? Arrives => Value(DayDetails.Arrives);

    public QuantitySyntax? StartUp => Value(DayDetails.StartUp);

    public QuantitySyntax? WashDown => Value(DayDetails.WashDown);

    public QuantitySyntax? HandWash => Value(DayDetails.HandWash);

    public IReadOnlyList<HelpSyntax> Helps => Values(DayDetails.Helps);

    public QuantitySyntax? Changeover => Value(DayDetails.Changeover);

    public IReadOnlyList<MoneySyntax> Rates => Values(DayDetails.Rate);

    public IReadOnlyList<MoneySyntax> Prices => Values(DayDetails.Price);
}

/// <summary><c>target 120 fish/h for 5 h</c></summary>
public sealed record TargetSyntax(QuantitySyntax Amount, QuantitySyntax? Hours);

/// <summary><c>arrives 40 fish</c> or <c>arrives before work</c>.</summary>
/// <param name="Load">Null where all are there before work.</param>
public sealed record ArrivalSyntax(QuantitySyntax? Load);

/// <summary><c>helps gutting from filleting</c>: both as in <c>crew</c>.</summary>
public sealed record HelpSyntax(NameSyntax Where, NameSyntax From);

/// <summary><c>elsewhere 2 toilets, changing room</c></summary>
public sealed record ElsewhereSyntax(NumberSyntax? Toilets, bool Changing);

public sealed record CrewSyntax(NameSyntax Where, NumberSyntax Count, SourceSpan Span);

/// <summary><c>rate water 2.10 per m3</c> and <c>price fish 4.50</c>.</summary>
/// <param name="Kind"><c>rate</c> or <c>price</c>.</param>
public sealed record MoneySyntax(WordSyntax Kind, NameSyntax Of, NumberSyntax Amount, TextSyntax? Per, SourceSpan Span);
