using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells;

/// <summary>What a plan says about a shell's own weight and what it may carry, in kg; null where not said.</summary>
/// <param name="EmptyKg">The bare box or trailer.</param>
/// <param name="RatedKg">The most that it may weigh in all, as on its plate.</param>
/// <param name="AxleRatedKg">The most that one axle may carry.</param>
/// <param name="AxlesFromHitch">From the coupling to the middle of the axles.</param>
/// <param name="HitchAhead">From the box to the coupling before it.</param>
public sealed record ShellLoads(double? EmptyKg, double? RatedKg, double? AxleRatedKg, Length? AxlesFromHitch, Length HitchAhead)
{
    /// <summary>The most that the coupling may carry, as on its plate.</summary>
    public double? HitchRatedKg { get; init; }

    public static ShellLoads None { get; } = new(null, null, null, null, Length.Zero);
}
