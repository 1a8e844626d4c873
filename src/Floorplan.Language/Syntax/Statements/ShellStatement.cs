using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>The box that is built into.</summary>
public sealed class ShellStatement : Statement
{
    /// <summary><c>container</c>, <c>trailer</c> or <c>shed</c>.</summary>
    public WordSyntax? Kind { get; internal set; }

    /// <summary>Length of a container in feet: 10, 20, 40 or 45.</summary>
    public NumberSyntax? ContainerFeet { get; internal set; }

    /// <summary><c>high-cube</c> rather than <c>standard</c>.</summary>
    public bool HighCube { get; internal set; }

    /// <summary>Outside length, width and height of a trailer or shed; a shed's height is that of its eaves.</summary>
    public SizeSyntax? Size { get; internal set; }

    /// <summary>Outside corners of a shed that is not a plain rectangle, in order round it.</summary>
    public List<CornerSyntax> Corners { get; } = [];

    public LengthSyntax? Eaves { get; internal set; }

    public LengthSyntax? LiningWalls { get; internal set; }

    /// <summary>What the walls are lined with: <c>lining walls 50 "plywood"</c></summary>
    public TextSyntax? LiningWallsOf { get; internal set; }

    public LengthSyntax? LiningCeiling { get; internal set; }

    public LengthSyntax? LiningFloor { get; internal set; }

    /// <summary>Thickness of the wall build-up of a trailer or shed.</summary>
    public LengthSyntax? WallThickness { get; internal set; }

    /// <summary>The end with cargo or ramp doors.</summary>
    public SideSyntax? Doors { get; internal set; }

    public SideSyntax? Hitch { get; internal set; }

    public NumberSyntax? Axles { get; internal set; }

    /// <summary><c>hitch west, 1200 ahead</c>: how far the coupling lies before the box.</summary>
    public LengthSyntax? HitchAhead { get; internal set; }

    /// <summary><c>axles 2, 4200 from hitch</c>: from the coupling to the middle of the axles.</summary>
    public LengthSyntax? AxlesFromHitch { get; internal set; }

    /// <summary><c>axles 2, 1500 kg each</c>: what the plate of one axle allows.</summary>
    public QuantitySyntax? AxleRated { get; internal set; }

    /// <summary><c>weight 1400 kg empty</c></summary>
    public QuantitySyntax? WeightEmpty { get; internal set; }

    /// <summary><c>weight 3500 kg rated</c>: what the plate of the whole allows.</summary>
    public QuantitySyntax? WeightRated { get; internal set; }

    /// <summary><c>ground 600 below floor</c></summary>
    public LengthSyntax? GroundBelowFloor { get; internal set; }

    /// <summary><c>true north 20 degrees</c>: clockwise from up the sheet.</summary>
    public NumberSyntax? TrueNorth { get; internal set; }

    /// <summary><c>posts every 1200</c></summary>
    public LengthSyntax? PostsEvery { get; internal set; }
}

public sealed record CornerSyntax(LengthSyntax X, LengthSyntax Y);
