using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>door</c>, <c>hatch</c>, <c>window</c>, <c>opening</c>, <c>chute</c> or <c>vent</c>: the keyword says which.</summary>
public sealed class OpeningStatement : Statement
{
    /// <summary>A room, or <c>outside</c>.</summary>
    public NameSyntax? First { get; internal set; }

    public NameSyntax? Second { get; internal set; }

    public SideSyntax? Wall { get; internal set; }

    public List<PlaceTerm> Place { get; } = [];

    /// <summary>Clear width and height of the hole.</summary>
    public SizeSyntax? Size { get; internal set; }

    public LengthSyntax? Sill { get; internal set; }

    /// <summary><c>swings</c>, <c>double</c>, <c>slides</c>, <c>strip</c> or <c>rolls</c>; null when not said.</summary>
    public WordSyntax? Leaf { get; internal set; }

    /// <summary><c>out</c>, <c>in</c> or a room.</summary>
    public NameSyntax? SwingsTo { get; internal set; }

    /// <summary>The end of the hole that the hinge is at.</summary>
    public SideSyntax? Hinge { get; internal set; }

    public bool ClosesItself { get; internal set; }

    public bool OpensFromInside { get; internal set; }

    /// <summary><c>steps 3</c>: how many equal rises lead from the ground to the floor.</summary>
    public NumberSyntax? Steps { get; internal set; }

    /// <summary>A ramp leads up to it.</summary>
    public bool Ramp { get; internal set; }

    /// <summary>A rail or a bar guards the edge.</summary>
    public bool Guard { get; internal set; }

    /// <summary>Words about the frame, for the drawing.</summary>
    public TextSyntax? Frame { get; internal set; }

    /// <summary><c>tube</c>, <c>angle</c> or <c>none</c>; null when not said.</summary>
    public WordSyntax? FrameForm { get; internal set; }

    /// <summary>Two sides and the thickness of the frame's section.</summary>
    public SizeSyntax? FrameSize { get; internal set; }

    /// <summary>Of the corners of the hole in the steel.</summary>
    public LengthSyntax? Radius { get; internal set; }
}
