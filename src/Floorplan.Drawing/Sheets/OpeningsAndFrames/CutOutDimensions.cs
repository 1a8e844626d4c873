using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Faces;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>
/// Running rows round an unrolled wall. Below and left, from the datum of the wall to the edges of openings and the middles of other holes;
/// above and right, from the finished
/// inside face and the finished floor to the clear openings.
/// </summary>
internal static class CutOutDimensions
{
    public static void Add(WallFace face, IReadOnlyList<CutOut> cuts, IReadOnlyList<ServiceHole> holes, DimensionSet set)
    {
        var start = face.Wall.From;
        var inside = face.Finished.From;
        set.Add(new DimensionRow(
            Side.South,
            DimensionForm.Running,
            [
                new(face.DatumU), new(face.U(face.Wall.To)),
                .. cuts.SelectMany(
                    c => new DimensionStop[] { new(face.U(c.Along + start), c.Bottom), new(face.U(c.Right + start), c.Bottom) }),
                .. holes.Select(h => new DimensionStop(face.U(h.X + start), h.Y)),
            ],
            "dimension:datum:along",
            face.IsMirrored));
        set.Add(new DimensionRow(
            Side.West,
            DimensionForm.Running,
            [
                new(Length.Zero), new(face.Height), .. cuts.SelectMany(c => new DimensionStop[] { new(c.Bottom), new(c.Top) }),
                .. holes.Select(h => new DimensionStop(h.Y))],
            "dimension:datum:up"));
        set.Add(new DimensionRow(
            Side.North,
            DimensionForm.Running,
            [
                new(face.U(inside)),
                .. cuts.SelectMany(c => new DimensionStop[]
                {
                    new(face.U(c.ClearAlong + start), c.ClearBottom + c.Opening.Height),
                    new(face.U(c.ClearAlong + start + c.Opening.Width), c.ClearBottom + c.Opening.Height),
                }),
            ],
            "dimension:finished:along",
            face.IsMirrored));
        set.Add(new DimensionRow(
            Side.East,
            DimensionForm.Running,
            [
                new(face.V(Length.Zero)), new(face.V(face.Shell.CeilingHeight)),
                .. cuts.SelectMany(c => new DimensionStop[] { new(c.ClearBottom), new(c.ClearBottom + c.Opening.Height) }),
            ],
            "dimension:finished:up"));
    }
}
