using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells;

/// <summary>How far the finished faces stand in from the bare shell.</summary>
public sealed record Linings(Length Walls, Length Ceiling, Length Floor)
{
    public static Linings None { get; } = new(Length.Zero, Length.Zero, Length.Zero);
}
