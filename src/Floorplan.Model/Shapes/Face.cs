using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;

namespace Floorplan.Model.Shapes;

/// <summary>A straight stretch of a region's edge, exact.</summary>
/// <param name="Side">The side of the region that it bounds; the region lies on the other side of it.</param>
/// <param name="At">Its y for north and south, its x for east and west.</param>
/// <param name="From">West or south end.</param>
/// <param name="To">East or north end.</param>
public readonly record struct Face(Side Side, Length At, Length From, Length To)
{
    public Length Run => To - From;
}
