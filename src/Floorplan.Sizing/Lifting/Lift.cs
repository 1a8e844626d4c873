namespace Floorplan.Sizing.Lifting;

/// <summary>One lift with two hands, as the revised NIOSH equation describes it.</summary>
/// <param name="LoadLb">Weight of the load, lb.</param>
/// <param name="HorizontalIn">From the middle between the ankles to the hands, in.</param>
/// <param name="VerticalIn">Height of the hands where the multipliers are taken, in.</param>
/// <param name="TravelIn">How far the load moves up or down, in.</param>
/// <param name="TwistDegrees">How far the body turns.</param>
/// <param name="PerMinute">Lifts a minute.</param>
public sealed record Lift(
    double LoadLb, double HorizontalIn, double VerticalIn, double TravelIn, double TwistDegrees, double PerMinute, LiftingDuration Duration,
    Coupling Coupling)
{
    /// <summary>Height of the hands at the start, which the frequency table goes by, in; where not said that of the lift itself.</summary>
    public double? OriginIn { get; init; }
}

/// <summary>How long in a stretch: up to one hour, two hours, eight hours, each with its rest.</summary>
public enum LiftingDuration
{
    Short,
    Moderate,
    Long,
}

/// <summary>How well hands hold the load.</summary>
public enum Coupling
{
    Good,
    Fair,
    Poor,
}
