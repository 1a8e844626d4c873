using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>water</c>, <c>drain</c>, <c>hose</c>, <c>panel</c>, <c>outlet</c>, <c>switch</c>, <c>heater</c> or <c>hole</c>: the keyword says which.</summary>
public sealed class ServiceStatement : Statement
{
    /// <summary>Words such as <c>cold</c>, <c>hot</c>, <c>floor</c>, <c>trench</c>, <c>single-phase</c>.</summary>
    public List<WordSyntax> Words { get; } = [];

    public NameSyntax? Room { get; internal set; }

    /// <summary>The water point that a hose hangs on.</summary>
    public NameSyntax? On { get; internal set; }

    public SideSyntax? Wall { get; internal set; }

    public List<PlaceTerm> Place { get; } = [];

    public LengthSyntax? Height { get; internal set; }

    /// <summary>A length that stands alone: the size of a drain or pipe, the length of a hose.</summary>
    public LengthSyntax? Size { get; internal set; }

    /// <summary>The second length of a rectangular hole: <c>400 x 300</c>.</summary>
    public LengthSyntax? SizeAcross { get; internal set; }

    /// <summary><c>outlet 150 below floor</c></summary>
    public LengthSyntax? OutletBelow { get; internal set; }

    /// <summary>The drain that a drain's line comes to next: <c>runs to fd2</c></summary>
    public NameSyntax? RunsTo { get; internal set; }

    /// <summary><c>circuit 4</c></summary>
    public TextSyntax? Circuit { get; internal set; }

    /// <summary>Ratings such as <c>100 A</c>.</summary>
    public List<QuantitySyntax> Ratings { get; } = [];
}
