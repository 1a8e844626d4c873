using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>A room: a slice <c>from … to …</c>, or a rectangle <c>area W x D</c> placed in the shell or carved from another room.</summary>
public sealed class RoomStatement : Statement
{
    /// <summary>Hygiene class, such as <c>dirty</c>.</summary>
    public WordSyntax? Class { get; internal set; }

    public SliceBoundSyntax? From => Value(RoomDetails.Slice)?.From;

    public SliceBoundSyntax? To => Value(RoomDetails.Slice)?.To;

    /// <summary>Width (west to east) and depth of a rectangle; null for a slice.</summary>
    public SizeSyntax? Area => Value(RoomDetails.Area);

    /// <summary>The room that the rectangle is carved from; null for the shell itself.</summary>
    public NameSyntax? In => Value(RoomDetails.In);

    public IReadOnlyList<PlaceTerm> Place => Values(RoomDetails.Place);

    public QuantitySyntax? Keep => Value(RoomDetails.Keep);

    /// <summary>What its cooling unit carries away.</summary>
    public QuantitySyntax? Cooling => Value(RoomDetails.Cooling);

    public QuantitySyntax? Light => Value(RoomDetails.Light);

    public LampsSyntax? Lamps => Value(RoomDetails.Lamps);

    /// <summary>True for <c>washed down</c>, false for <c>kept dry</c>, null when not said.</summary>
    public bool? WashedDown => Value(RoomDetails.Washed) is { } washed ? washed.Text == "down" : null;

    public IReadOnlyList<FinishSyntax> Finishes => [.. Values(RoomDetails.Finish).SelectMany(f => f)];
}

/// <summary><c>lamps 6 x 4000 lm 36 W</c></summary>
/// <param name="Flux">Light that one gives.</param>
/// <param name="Power">What one draws; null when not said.</param>
public sealed record LampsSyntax(int Count, QuantitySyntax Flux, QuantitySyntax? Power);

/// <param name="To">Null when it could not be read.</param>
public sealed record SliceSyntax(SliceBoundSyntax From, SliceBoundSyntax? To);

/// <summary>A slice's bound: a side of the shell, or a distance from the west (or south) finished face. Exactly one is set.</summary>
public sealed record SliceBoundSyntax(SideSyntax? Side, LengthSyntax? Distance, SourceSpan Span);

/// <summary><c>finish floor "resin"</c>; the surface is floor, walls, ceiling or base.</summary>
public sealed record FinishSyntax(WordSyntax Surface, TextSyntax Text);
