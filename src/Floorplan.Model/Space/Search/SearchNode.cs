using Floorplan.Model.Space.Free;
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
    Coordinate Left, int LeftCorner, Coordinate Right, int RightCorner, Passage? Gate);
