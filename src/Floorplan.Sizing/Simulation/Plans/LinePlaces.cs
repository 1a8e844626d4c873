using Floorplan.Model.Flows;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>One time that product is at a stop.</summary>
/// <param name="Time">1, or 2 where it comes there again.</param>
/// <param name="SameAs">The index of time 1; -1 for time 1 itself.</param>
internal sealed record LinePlace(Stop Stop, int Time, int SameAs);

/// <summary>
/// The places of a line in the order of its ways. A way to a stop that leads to where the way begins would close a ring: it leads to that
/// stop once more, as a place of its own.
/// </summary>
internal sealed class LinePlaces
{
    /// <summary>A unit with more in its line is no small one; own bound.</summary>
    public const int Most = 500;

    private readonly List<LinePlace> places = [];
    private readonly Dictionary<(string Name, int Time), int> indices = [];

    public LinePlaces() => Index(new OutsideStop(default), isStart: true, 1);

    public IReadOnlyList<LinePlace> All => places;

    public bool IsTooMany => places.Count > Most;

    public LineNet Net() => new(this);

    /// <summary>Where product comes from and where it leaves to are two places.</summary>
    public static string Name(Stop stop, bool isStart) => stop is OutsideStop && !isStart ? "outside again" : stop.Name;

    public int Index(Stop stop, bool isStart, int time)
    {
        string name = Name(stop, isStart);
        if (!indices.TryGetValue((name, time), out int index))
        {
            indices[(name, time)] = index = places.Count;
            places.Add(new LinePlace(stop, time, time > 1 ? indices[(name, 1)] : -1));
        }

        return index;
    }
}
