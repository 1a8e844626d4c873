using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>
/// All that is seen from one root (the last corner that the way turns at) through a stretch of one cell edge.
/// <see cref="Left"/> and <see cref="Right"/> are the ends of that stretch as seen from the root.
/// </summary>
/// <param name="Walked">Length of the way up to the root.</param>
/// <param name="Turn">The root's corner and the way it turns, see <see cref="Turns"/>; -1 for the start.</param>
/// <param name="Parent">Node that this one was reached from, or -1.</param>
/// <param name="Edge">Edge of the cell that is entered next; -1 for a finished way.</param>
/// <param name="LeftCorner">Corner number when the end is a corner, otherwise -1: a way can turn only at corners.</param>
/// <param name="Gate">Passage whose gate is crossed here, or null.</param>
internal readonly record struct SearchNode(
    Coordinate Root, double Walked, int Turn, int Parent, int Region, int Edge,
    Coordinate Left, int LeftCorner, Coordinate Right, int RightCorner, Passage? Gate)
{
    /// <summary>The root is an end of the stretch itself, so that the whole cell behind it is seen.</summary>
    public bool AtEnd => Root.Equals2D(Left) || Root.Equals2D(Right);

    /// <summary>
    /// The end of a way to a point of the cell behind the stretch: from the root straight on, or round an end of the stretch
    /// when the point is out of sight behind it; null when that end is no corner.
    /// </summary>
    public SearchNode? EndingAt(Coordinate p)
    {
        bool left = !AtEnd && Line.Offset(Root, Left, p) > FloorMesh.Same;
        if (!left && (AtEnd || Line.Offset(Root, Right, p) >= -FloorMesh.Same))
        {
            return this with { Edge = -1, Gate = null };
        }

        var end = left ? Left : Right;
        return (left ? LeftCorner : RightCorner) < 0
            ? null
            : this with { Root = end, Walked = Walked + Root.Distance(end), Edge = -1, Gate = null };
    }

    /// <summary>The shortest way from the root through the stretch to the goal if nothing else stood between.</summary>
    public double Ahead(Coordinate goal)
    {
        double side = Line.Offset(Right, Left, goal);
        double rootSide = Line.Offset(Right, Left, Root);
        if (side * rootSide > 0)
        {
            // A goal on the root's own side is reached by turning back at the stretch: as long as going to its mirror image.
            double dx = Left.X - Right.X, dy = Left.Y - Right.Y, length = Math.Sqrt((dx * dx) + (dy * dy));
            goal = new Coordinate(goal.X + (2 * side * dy / length), goal.Y - (2 * side * dx / length));
        }

        double offLeft = Line.Offset(Root, Left, goal), offRight = Line.Offset(Root, Right, goal);
        return AtEnd || (offLeft <= 0 && offRight >= 0) ? Root.Distance(goal)
            : offLeft > 0 ? Root.Distance(Left) + Left.Distance(goal)
            : Root.Distance(Right) + Right.Distance(goal);
    }
}
