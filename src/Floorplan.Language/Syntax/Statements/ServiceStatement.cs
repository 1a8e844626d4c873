using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>water</c>, <c>drain</c>, <c>hose</c>, <c>panel</c>, <c>outlet</c>, <c>switch</c>, <c>heater</c> or <c>hole</c>: the keyword says which.</summary>
public sealed class ServiceStatement : Statement
{
    /// <summary>Words such as <c>cold</c>, <c>hot</c>, <c>floor</c>, <c>trench</c>, <c>single-phase</c>, in the order written.</summary>
    public IReadOnlyList<WordSyntax> Words =>
        [.. Details.SelectMany(d => d.Value switch { WordSyntax word => [word], RatingSyntax rating => rating.Words, _ => (IEnumerable<WordSyntax>)[] })];

    public NameSyntax? Room => Value(ServiceDetails.Room);

    /// <summary>The water point that a hose hangs on.</summary>
    public NameSyntax? On => Value(ServiceDetails.On);

    public SideSyntax? Wall => Value(ServiceDetails.Wall);

    public IReadOnlyList<PlaceTerm> Place => Values(ServiceDetails.Place);

    public LengthSyntax? Height => Value(ServiceDetails.Height);

    /// <summary>A length that stands alone: the size of a drain or pipe, the length of a hose.</summary>
    public LengthSyntax? Size => Value(ServiceDetails.Size) ?? Value(ServiceDetails.HoleSize)?.Width;

    /// <summary>The second length of a rectangular hole: <c>400 x 300</c>.</summary>
    public LengthSyntax? SizeAcross => Value(ServiceDetails.HoleSize)?.Depth;

    /// <summary><c>outlet 150 below floor</c></summary>
    public LengthSyntax? OutletBelow => Value(ServiceDetails.OutletBelow);

    /// <summary>The drain that a drain's line comes to next: <c>runs to fd2</c></summary>
    public NameSyntax? RunsTo => Value(ServiceDetails.RunsTo);

    /// <summary><c>circuit 4</c></summary>
    public TextSyntax? Circuit => Value(ServiceDetails.Circuit);

    /// <summary>Ratings such as <c>100 A</c>.</summary>
    public IReadOnlyList<QuantitySyntax> Ratings => [.. Values(ServiceDetails.Rating).SelectMany(r => r.Amounts)];
}

/// <summary><c>100 A 230 V single-phase</c></summary>
public sealed record RatingSyntax(IReadOnlyList<QuantitySyntax> Amounts, IReadOnlyList<WordSyntax> Words);
