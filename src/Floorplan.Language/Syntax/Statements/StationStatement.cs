using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>
/// <c>station</c>, <c>store</c>, <c>bin</c>, <c>sink</c> or <c>kind</c>: the keyword says which. A kind has no room and no place. What
/// it says
/// is asked for by <see cref="Statement.Value{T}"/> and the details of <see cref="StationDetails"/>.
/// </summary>
public sealed class StationStatement : Statement
{
    /// <summary>The kind that it takes its details from; its own override.</summary>
    public NameSyntax? Kind { get; internal set; }

    /// <summary>Words before the room, such as <c>hand</c> of a sink.</summary>
    public List<WordSyntax> Purpose { get; } = [];

    public NameSyntax? Room => Value(StationDetails.Room);

    public IReadOnlyList<PlaceTerm> Place => Values(StationDetails.Place);
}

/// <summary><c>worker south</c> or <c>workers 2 north, 800 apart</c></summary>
public sealed record WorkersSyntax(int Count, SideSyntax Side, LengthSyntax? Apart, SourceSpan Span);

/// <summary><c>work 24 s each, spread 20 %, heavy</c></summary>
/// <param name="Kind"><c>precise</c>, <c>light</c>, <c>heavy</c> or <c>cutting</c>.</param>
public sealed record WorkSyntax(QuantitySyntax? Each, WordSyntax? Kind)
{
    /// <summary>How much the time differs from piece to piece: standard deviation over mean.</summary>
    public QuantitySyntax? Spread { get; init; }
}

/// <summary><c>rework 5 %</c>, <c>rework 5 % at wash</c></summary>
/// <param name="At">The earlier station where they begin again; null where it is done at once.</param>
public sealed record ReworkSyntax(QuantitySyntax Share, NameSyntax? At);

/// <summary><c>pause 20 s every 25 fish</c></summary>
public sealed record PauseSyntax(QuantitySyntax Time, QuantitySyntax Every);

/// <summary><c>for turkeys work 90 s batch 2 cycle 60 s</c>: what differs for another product of the plan.</summary>
public sealed record ForProductSyntax(NameSyntax Product, SourceSpan Span)
{
    public QuantitySyntax? Work { get; init; }

    public QuantitySyntax? Cycle { get; init; }

    public QuantitySyntax? Stays { get; init; }

    public NumberSyntax? Batch { get; init; }

    public NumberSyntax? Holds { get; init; }

    public NumberSyntax? Waits { get; init; }
}

/// <summary><c>weight 60 kg empty, 90 kg full</c></summary>
public sealed record WeightSyntax(QuantitySyntax? Empty, QuantitySyntax? Full);

/// <summary>
/// <c>cold 12 L/min</c>, <c>hot 4 L/min at 60 C</c>, <c>drain</c>, <c>power 230 V 0.8 kW</c>: the word is cold, hot, drain, power, air,
/// ice,
/// steam or sterilizer.
/// </summary>
public sealed record NeedSyntax(WordSyntax Kind, IReadOnlyList<QuantitySyntax> Amounts, QuantitySyntax? At, SourceSpan Span)
{
    /// <summary><c>single-phase</c> or <c>three-phase</c> of power; null when not said.</summary>
    public WordSyntax? Phase { get; init; }

    /// <summary><c>to fill</c>: water that runs only until it is full.</summary>
    public bool IsToFill { get; init; }
}

/// <summary><c>clear south 900 "crate trolley"</c></summary>
public sealed record ClearSyntax(SideSyntax Side, LengthSyntax Depth, TextSyntax? Purpose, SourceSpan Span);

/// <summary><c>waste 0.12 kg each to offal-bin</c></summary>
public sealed record WasteSyntax(QuantitySyntax? Amount, NameSyntax? To, SourceSpan Span);
