using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Dimensions;

/// <summary>
/// The dimension rows round one view, from the plan outwards in the order added; overall rows always end up outermost. Rows that
/// would repeat another row of their side are left out.
/// </summary>
/// <param name="extent">The outline that rows stand off from, in plan mm.</param>
public sealed class DimensionSet(Envelope extent, UnitSystem units, DrawingStandard standard)
{
    private readonly List<DimensionRow> _rows = [];

    public Envelope Extent => extent;

    public UnitSystem Units => units;

    public DrawingStandard Standard => standard;

    public void Add(DimensionRow row) => _rows.Add(row);

    /// <summary>Paper taken outside the extent on a side, in mm, at a scale.</summary>
    public double Depth(Side side, double denominator) => throw new NotImplementedException();

    /// <summary>Draws all rows; the text is fixed in the scene, so labels keep clear of it.</summary>
    public void Draw(SceneBuilder scene, PlanTransform transform) => throw new NotImplementedException();

    /// <summary>
    /// A dimension inside the view, from one point to another along x or y, drawn at once with its text in the middle; false when
    /// there is no room for its text.
    /// </summary>
    public bool DrawInner(SceneBuilder scene, PlanTransform transform, Model.Shapes.PlanPoint from, Model.Shapes.PlanPoint to, string? group = null) =>
        throw new NotImplementedException();
}
