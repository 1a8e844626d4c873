namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>What one person or one station was at through the day, as shares of each slot of time.</summary>
/// <param name="Group">The crew; empty for a station.</param>
/// <param name="Name">Of the person, such as <c>evis 2</c>, or the id of the station.</param>
/// <param name="Slots">By slot and <see cref="DayState"/>; the shares of a slot sum up to one.</param>
public sealed record DayLane(string Group, string Name, IReadOnlyList<IReadOnlyList<double>> Slots)
{
    public double Share(int slot, DayState state) => Slots[slot][(int)state];

    /// <summary>Of the whole day, in slots.</summary>
    public double Sum(DayState state) => Slots.Sum(s => s[(int)state]);
}
