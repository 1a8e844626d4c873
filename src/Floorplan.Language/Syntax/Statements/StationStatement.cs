using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>station</c>, <c>store</c>, <c>bin</c>, <c>sink</c> or <c>kind</c>: the keyword says which. A kind has no room and no place.</summary>
public sealed class StationStatement : Statement
{
    /// <summary>The kind that it takes its details from; its own override.</summary>
    public NameSyntax? Kind { get; internal set; }

    public NameSyntax? Room { get; internal set; }

    /// <summary>Words before the room, such as <c>hand</c> of a sink.</summary>
    public List<WordSyntax> Purpose { get; } = [];

    /// <summary>Volume of a bin or tank, such as <c>60 L</c>.</summary>
    public QuantitySyntax? Volume { get; internal set; }

    public SizeSyntax? Size { get; internal set; }

    public List<PlaceTerm> Place { get; } = [];

    /// <summary>Degrees clockwise.</summary>
    public NumberSyntax? Turned { get; internal set; }

    public List<WorkersSyntax> Workers { get; } = [];

    public QuantitySyntax? WorkEach { get; internal set; }

    /// <summary><c>precise</c>, <c>light</c>, <c>heavy</c> or <c>cutting</c>.</summary>
    public WordSyntax? WorkKind { get; internal set; }

    public QuantitySyntax? Batch { get; internal set; }

    public QuantitySyntax? Cycle { get; internal set; }

    public QuantitySyntax? Stays { get; internal set; }

    public QuantitySyntax? Holds { get; internal set; }

    public List<NeedSyntax> Needs { get; } = [];

    public List<ClearSyntax> Clears { get; } = [];

    public QuantitySyntax? WeightEmpty { get; internal set; }

    public QuantitySyntax? WeightFull { get; internal set; }

    public List<WasteSyntax> Wastes { get; } = [];

    public TextSyntax? Cost { get; internal set; }

    /// <summary>Hung from the ceiling or a wall, so that the floor below is free.</summary>
    public bool Hung { get; internal set; }

    public LengthSyntax? Underside { get; internal set; }

    /// <summary><c>air gap 50</c>: between the water inlet and the rim.</summary>
    public LengthSyntax? AirGap { get; internal set; }

    /// <summary><c>inlet 20</c>: the diameter of the water inlet.</summary>
    public LengthSyntax? Inlet { get; internal set; }

    /// <summary><c>circuit 4</c>: the circuit that its power comes from.</summary>
    public TextSyntax? Circuit { get; internal set; }

    public LengthSyntax? WorkHeight { get; internal set; }

    /// <summary><c>on wheels</c></summary>
    public bool OnWheels { get; internal set; }
}

/// <summary><c>worker south</c> or <c>workers 2 north, 800 apart</c></summary>
public sealed record WorkersSyntax(int Count, SideSyntax Side, LengthSyntax? Apart, SourceSpan Span);

/// <summary><c>cold 12 L/min</c>, <c>hot 4 L/min at 60 C</c>, <c>drain</c>, <c>power 230 V 0.8 kW</c>: the word is cold, hot, drain, power, air, ice or steam.</summary>
public sealed record NeedSyntax(WordSyntax Kind, IReadOnlyList<QuantitySyntax> Amounts, QuantitySyntax? At, SourceSpan Span);

/// <summary><c>clear south 900 "crate trolley"</c></summary>
public sealed record ClearSyntax(SideSyntax Side, LengthSyntax Depth, TextSyntax? Purpose, SourceSpan Span);

/// <summary><c>waste 0.12 kg each to offal-bin</c></summary>
public sealed record WasteSyntax(QuantitySyntax? Amount, NameSyntax? To, SourceSpan Span);
