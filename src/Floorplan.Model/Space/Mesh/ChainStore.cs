namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// The chains of a sweep: corners from the lower edge of a stretch of floor to its upper edge, linked both ways, with the
/// corner that was reached last (it is the easternmost, and sees any corner that comes next).
/// </summary>
internal sealed class ChainStore
{
    public const int None = -1;

    private readonly List<(int Corner, int Down, int Up)> nodes = [];
    private readonly List<(int Bottom, int Top, int Last)> chains = [];

    public int New(int corner)
    {
        nodes.Add((corner, None, None));
        chains.Add((nodes.Count - 1, nodes.Count - 1, nodes.Count - 1));
        return chains.Count - 1;
    }

    public int Bottom(int chain) => chain == None ? None : chains[chain].Bottom;

    public int Top(int chain) => chain == None ? None : chains[chain].Top;

    public int Corner(int node) => nodes[node].Corner;

    public int Down(int node) => nodes[node].Down;

    public int Up(int node) => nodes[node].Up;

    public void PushTop(int chain, int corner)
    {
        var (bottom, top, _) = chains[chain];
        int node = Add(corner, top, None);
        nodes[top] = nodes[top] with { Up = node };
        chains[chain] = (bottom, node, node);
    }

    public void PushBottom(int chain, int corner)
    {
        var (bottom, top, _) = chains[chain];
        int node = Add(corner, None, bottom);
        nodes[bottom] = nodes[bottom] with { Down = node };
        chains[chain] = (node, top, node);
    }

    public void DropTop(int chain)
    {
        var (bottom, top, last) = chains[chain];
        int below = nodes[top].Down;
        nodes[below] = nodes[below] with { Up = None };
        chains[chain] = (bottom, below, last);
    }

    public void DropBottom(int chain)
    {
        var (bottom, top, last) = chains[chain];
        int next = nodes[bottom].Up;
        nodes[next] = nodes[next] with { Down = None };
        chains[chain] = (next, top, last);
    }

    /// <summary>Keeps the part up to the last corner, and gives a new chain with that corner and what lies above it.</summary>
    public int SplitAtLast(int chain)
    {
        var (bottom, top, last) = chains[chain];
        int up = nodes[last].Up;
        int copy = Add(nodes[last].Corner, None, up);
        if (up != None)
        {
            nodes[up] = nodes[up] with { Down = copy };
        }

        nodes[last] = nodes[last] with { Up = None };
        chains[chain] = (bottom, last, last);
        chains.Add((copy, up == None ? copy : top, copy));
        return chains.Count - 1;
    }

    /// <summary>Joins two chains where the lower one ends at the corner that the upper one starts at.</summary>
    public int Join(int lower, int upper)
    {
        var (bottom, middle, _) = chains[lower];
        var (doubled, top, _) = chains[upper];
        int up = nodes[doubled].Up;
        nodes[middle] = nodes[middle] with { Up = up };
        if (up != None)
        {
            nodes[up] = nodes[up] with { Down = middle };
        }

        chains[lower] = (bottom, up == None ? middle : top, middle);
        return lower;
    }

    private int Add(int corner, int down, int up)
    {
        nodes.Add((corner, down, up));
        return nodes.Count - 1;
    }
}
