using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Flows;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads a <c>flow</c> statement. Null when its stream is not known.</summary>
internal static class FlowReader
{
    public static FlowDraft? Read(FlowStatement statement)
    {
        if (StreamOf(statement.Stream?.Text) is not { } stream)
        {
            return null;
        }

        return new FlowDraft(
            stream,
            statement.Label?.Text ?? "",
            [.. statement.Chains.Select(
                c => new ChainDraft([.. c.Stops.Select(s => new NameRef(s.Text, s.Span))], CarriageOf(c), PeriodOf(c), c.Span))],
            statement.Product?.Text, statement.HeadSpan);
    }

    private static Carriage? CarriageOf(ChainSyntax chain) => chain.Carriage?.Text switch
    {
        "hand" => new Carriage(CarriageKind.Hand, null)
        {
            LoadKilograms = chain.Load?.Value.Base,
            LoadKind = LoadOf(chain),
            Takes = chain.Takes?.Value,
        },
        "trolley" => new Carriage(CarriageKind.Trolley, chain.Width?.Value)
        {
            Length = chain.Length?.Value,
            Takes = chain.Takes?.Value,
            Trolleys = (int?)chain.Trolleys?.Value,
        },
        "rail" => new Carriage(CarriageKind.Rail, null) { Takes = chain.Takes?.Value },
        "conveyor" => new Carriage(CarriageKind.Conveyor, chain.Width?.Value),
        "chute" => new Carriage(CarriageKind.Chute, null),
        "pump" => new Carriage(CarriageKind.Pump, null),
        _ => null,
    };

    private static LoadKind LoadOf(ChainSyntax chain) => chain.LoadKind?.Text switch
    {
        "live" => LoadKind.Live,
        "liquid" => LoadKind.Liquid,
        _ => LoadKind.Still,
    };

    private static Period PeriodOf(ChainSyntax chain) => chain.Period?.Text switch
    {
        "before" => Period.Before,
        "after" => Period.After,
        _ => Period.During,
    };

    private static Stream? StreamOf(string? word) => word switch
    {
        "product" => Stream.Product,
        "waste" => Stream.Waste,
        "people" => Stream.People,
        "supplies" => Stream.Supplies,
        "returns" => Stream.Returns,
        _ => null,
    };
}
