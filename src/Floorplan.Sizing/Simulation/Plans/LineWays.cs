using Floorplan.Model.Flows;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Simulation.Plans;

/// <param name="Nets">The products' ways that it is one of.</param>
/// <param name="From">Index of its place.</param>
/// <param name="To">The same.</param>
internal sealed record PlacedWay(LineWay Way, List<LineNet> Nets, int From, int To);

/// <summary>The ways of product through the day, and the places that they lead between.</summary>
internal sealed class LineWays
{
    private readonly Dictionary<string, LineNet> nets = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<PlacedWay> all = [];
    private readonly Dictionary<(int From, int To), List<PlacedWay>> between = [];

    public LineWays(IEnumerable<LineWay> ways)
    {
        // Product leaves a store after work, so the way from it is none of the day.
        foreach (var own in ways.Where(w => !(w.From is StationStop { Station.Role: StationRole.Store } && w.To is OutsideStop))
            .GroupBy(w => w.Product, StringComparer.OrdinalIgnoreCase))
        {
            Add(nets[own.Key] = Places.Net(), [.. own]);
        }
    }

    public LinePlaces Places { get; } = new();

    /// <summary>In the order of the flows, those of each product by themselves.</summary>
    public IReadOnlyList<PlacedWay> All => all;

    public IReadOnlyList<Stop> Stops => [.. Places.All.Select(p => p.Stop)];

    /// <summary>Of the product's own flows, or else of the flows for none; null where there are neither.</summary>
    public LineNet? NetOf(string product) => nets.GetValueOrDefault(product) ?? nets.GetValueOrDefault("");

    /// <summary>
    /// A place that product comes to again and stays at, though it goes elsewhere from there the first time: the lines of the flow are not
    /// in its order. Null where there is none.
    /// </summary>
    public LinePlace? EndsTooEarly(LineNet net) => Places.All.Index()
        .Where(p => p.Item.SameAs >= 0 && net.Has(p.Index) && !net.GoesOn(p.Index)
            && net.From(p.Item.SameAs).Any(to => to != p.Index && !net.Reaches(to, p.Index)))
        .Select(p => p.Item).FirstOrDefault();

    private void Add(LineNet net, IReadOnlyList<LineWay> ways)
    {
        foreach (var way in ways)
        {
            if (Places.IsTooMany)
            {
                return;
            }

            var (from, to) = net.Add(way.From, way.To);
            Add(way, net, from, to);
        }

        if (!ways.Any(w => w.From is OutsideStop))
        {
            Connect(net);
        }
    }

    /// <summary>A line that begins at a station, where the day's items are from the start.</summary>
    private void Connect(LineNet net)
    {
        foreach (int first in net.Firsts.ToList())
        {
            var way = all.First(w => w.From == first && w.Nets.Contains(net)).Way;
            var start = new LineWay(new OutsideStop(default), way.From, [way.Legs[0] with { Route = null }]) { IsStart = true };
            net.Join(0, first);
            Add(start, net, 0, first);
        }
    }

    /// <summary>Two products that go from place to place in the same way share it, and what carries them.</summary>
    private void Add(LineWay way, LineNet net, int from, int to)
    {
        var known = between[(from, to)] = between.GetValueOrDefault((from, to)) ?? [];
        if (known.Find(k => k.Way.IsStart == way.IsStart && k.Way.Carriage == way.Carriage && !k.Nets.Contains(net)) is { } same)
        {
            same.Nets.Add(net);
            return;
        }

        var placed = new PlacedWay(way, [net], from, to);
        known.Add(placed);
        all.Add(placed);
    }
}
