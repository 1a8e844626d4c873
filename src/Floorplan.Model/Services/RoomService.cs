using Floorplan.Language.Quantities;

namespace Floorplan.Model.Services;

/// <summary>A service of a whole room, such as its light: it is at the middle of the room and has no name of its own.</summary>
public abstract record RoomService : ServicePoint
{
    /// <summary>How much of it, as written: a light level, or a flow of air; null when not said.</summary>
    public Quantity? Amount { get; init; }
}
