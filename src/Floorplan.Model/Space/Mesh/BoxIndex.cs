using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Space.Mesh;

/// <summary>Numbers found by box: a plain list while there are few, a tree when there are many.</summary>
internal sealed class BoxIndex
{
    /// <summary>Up to so many boxes looking at each is faster than building a tree. Measured.</summary>
    private const int Few = 150;

    private readonly List<(Envelope Box, int Number)> items = [];
    private STRtree<int>? tree;

    /// <summary>The box round all boxes.</summary>
    public Envelope Bounds { get; } = new();

    /// <summary>Not after the first query.</summary>
    public void Add(Envelope box, int number)
    {
        items.Add((box, number));
        Bounds.ExpandToInclude(box);
    }

    public IEnumerable<int> Near(Envelope box)
    {
        if (items.Count > Few)
        {
            return Tree().Query(box);
        }

        var found = new List<int>();
        foreach (var item in items)
        {
            if (item.Box.Intersects(box))
            {
                found.Add(item.Number);
            }
        }

        return found;
    }

    private STRtree<int> Tree()
    {
        if (tree is null)
        {
            tree = new STRtree<int>();
            foreach (var (box, number) in items)
            {
                tree.Insert(box, number);
            }

            tree.Build();
        }

        return tree;
    }
}
