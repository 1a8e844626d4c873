using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells;

/// <summary>How far the finished faces stand in from the bare shell.</summary>
public sealed record Linings(Length Walls, Length Ceiling, Length Floor)
{
    /// <summary>What the walls are lined with, as written; empty when not said.</summary>
    public string WallsOf { get; init; } = "";

    /// <summary>What the ceiling is lined with, as written; empty when not said.</summary>
    public string CeilingOf { get; init; } = "";

    /// <summary>What the floor is built up of, as written; empty when not said.</summary>
    public string FloorOf { get; init; } = "";

    public static Linings None { get; } = new(Length.Zero, Length.Zero, Length.Zero);
}
