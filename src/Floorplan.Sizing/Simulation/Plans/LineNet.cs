using System.Collections;
using Floorplan.Model.Flows;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>The ways that one product takes, from place to place.</summary>
internal sealed class LineNet(LinePlaces places)
{
    private readonly Dictionary<string, int> latest = new(StringComparer.Ordinal);
    private readonly HashSet<(int From, int To)> ways = [];
    private readonly HashSet<int> starts = [];
    private readonly HashSet<int> ends = [];

    /// <summary>By place, the places that can be reached from it.</summary>
    private readonly Dictionary<int, BitArray> reached = [];

    public IEnumerable<int> Visited => reached.Keys;

    public bool Has(int place) => reached.ContainsKey(place);

    public bool GoesOn(int place) => starts.Contains(place);

    /// <summary>Where nothing leads to.</summary>
    public IEnumerable<int> Firsts => reached.Keys.Where(p => !ends.Contains(p)).Order();

    public IEnumerable<int> From(int place) => ways.Where(w => w.From == place).Select(w => w.To);

    public bool Reaches(int from, int to) => reached.TryGetValue(from, out var all) && all[to];

    /// <summary>The places that a way leads from and to; not to be asked any more once they are too many.</summary>
    public (int From, int To) Add(Stop from, Stop to)
    {
        int start = At(from, isStart: true);
        int end = At(to, isStart: false);
        if (end == start || Reaches(end, start))
        {
            string name = LinePlaces.Name(to, isStart: false);
            end = places.Index(to, isStart: false, ++latest[name]);
            Know(end);
        }

        Join(start, end);
        return (start, end);
    }

    public void Join(int from, int to)
    {
        Know(from);
        Know(to);
        if (!ways.Add((from, to)))
        {
            return;
        }

        starts.Add(from);
        ends.Add(to);
        foreach (var (place, all) in reached)
        {
            if ((place == from || all[from]) && !all[to])
            {
                all[to] = true;
                all.Or(reached[to]);
            }
        }
    }

    private int At(Stop stop, bool isStart)
    {
        string name = LinePlaces.Name(stop, isStart);
        if (!latest.TryGetValue(name, out int time))
        {
            latest[name] = time = 1;
        }

        int index = places.Index(stop, isStart, time);
        Know(index);
        return index;
    }

    /// <summary>One way more than the bound may bring three places.</summary>
    private void Know(int place)
    {
        if (!reached.ContainsKey(place))
        {
            reached[place] = new BitArray(LinePlaces.Most + 4);
        }
    }
}
