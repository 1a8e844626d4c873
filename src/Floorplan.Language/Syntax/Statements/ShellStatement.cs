using Floorplan.Language.Details;
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
    public IReadOnlyList<CornerSyntax> Corners => Value(ShellDetails.Corners) ?? [];

    public LengthSyntax? Eaves => Value(ShellDetails.Eaves);

    public LiningSyntax? Lining => Value(ShellDetails.Lining);

    /// <summary>Thickness of the wall build-up of a trailer or shed.</summary>
    public LengthSyntax? WallThickness => Value(ShellDetails.Walls);

    /// <summary>The end with cargo or ramp doors.</summary>
    public SideSyntax? Doors => Value(ShellDetails.Doors);

    public HitchSyntax? Hitch => Value(ShellDetails.Hitch);

    public AxlesSyntax? Axles => Value(ShellDetails.Axles);

    public ShellWeightSyntax? Weight => Value(ShellDetails.Weight);

    public LengthSyntax? GroundBelowFloor => Value(ShellDetails.Ground);

    /// <summary>Degrees clockwise from up the sheet.</summary>
    public NumberSyntax? TrueNorth => Value(ShellDetails.TrueNorth);

    public LengthSyntax? PostsEvery => Value(ShellDetails.PostsEvery);
}

/// <param name="WallsOf">What the walls are lined with: <c>lining walls 50 "plywood"</c></param>
public sealed record LiningSyntax(LengthSyntax? Walls, TextSyntax? WallsOf, LengthSyntax? Ceiling, LengthSyntax? Floor)
{
    /// <summary>What the ceiling is lined with: <c>lining ceiling 40 "panel"</c></summary>
    public TextSyntax? CeilingOf { get; init; }

    /// <summary>What the floor is built up of: <c>lining floor 60 "screed"</c></summary>
    public TextSyntax? FloorOf { get; init; }
}

/// <summary><c>hitch west, 1200 ahead, 100 kg rated</c></summary>
/// <param name="Ahead">How far the coupling lies before the box; null when not said.</param>
/// <param name="Rated">What the plate of the coupling allows it to carry; null when not said.</param>
public sealed record HitchSyntax(SideSyntax End, LengthSyntax? Ahead, QuantitySyntax? Rated);

/// <summary><c>axles 2, 4200 from hitch, 1500 kg each</c></summary>
/// <param name="FromHitch">From the coupling to the middle of the axles.</param>
/// <param name="Rated">What the plate of one axle allows.</param>
public sealed record AxlesSyntax(NumberSyntax Count, LengthSyntax? FromHitch, QuantitySyntax? Rated);

/// <summary><c>weight 1400 kg empty, 3500 kg rated</c></summary>
/// <param name="Rated">What the plate of the whole allows.</param>
public sealed record ShellWeightSyntax(QuantitySyntax? Empty, QuantitySyntax? Rated);

public sealed record CornerSyntax(LengthSyntax X, LengthSyntax Y);
