using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;

namespace Floorplan.Model.Binding.Openings;

/// <summary>Finds the stretches of wall between two rooms, or between a room and outside.</summary>
internal sealed class WallFinder(BuiltShell shell, IReadOnlyList<LaidRoom> rooms, Length thickness)
{
    private readonly FaceIndex faces = new(rooms);

    /// <summary>Stretches on the first room's sides, longest first.</summary>
    public IReadOnlyList<WallStretch> Between(LaidRoom first, LaidRoom second)
        => [.. first.Floor.Faces.SelectMany(f => Shared(f, second)).OrderByDescending(s => s.Run)];

    /// <summary>Stretches of a room's outside walls, longest first.</summary>
    public IReadOnlyList<WallStretch> ToOutside(LaidRoom room)
        => [.. room.Floor.Faces.SelectMany(Outer).OrderByDescending(s => s.Run)];

    private IEnumerable<WallStretch> Shared(Face face, LaidRoom second)
    {
        var far = Outward(face.Side) * thickness.Nanometres;
        foreach (var (room, facing) in faces.At(face.Side.Opposite(), new Length(face.At.Nanometres + far)))
        {
            var from = Length.Max(face.From, facing.From);
            var to = Length.Min(face.To, facing.To);
            if (room.Id == second.Id && from < to)
            {
                yield return new WallStretch(face.Side, face.At, facing.At, from, to);
            }
        }
    }

    private IEnumerable<WallStretch> Outer(Face face)
    {
        foreach (var outer in shell.Finished.Faces.Where(f => f.Side == face.Side && f.At == face.At))
        {
            var from = Length.Max(face.From, outer.From);
            var to = Length.Min(face.To, outer.To);
            if (from < to)
            {
                yield return new WallStretch(face.Side, face.At, face.At + (shell.Depth[face.Side] * Outward(face.Side)), from, to);
            }
        }
    }

    private static int Outward(Side side) => side is Side.North or Side.East ? 1 : -1;
}
