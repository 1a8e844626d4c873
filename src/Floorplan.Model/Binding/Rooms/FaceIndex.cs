using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>All faces of all rooms by side and place, so that a wall's other face is found at once.</summary>
internal sealed class FaceIndex
{
    private readonly ILookup<(Side, Length), (LaidRoom Room, Face Face)> faces;

    public FaceIndex(IEnumerable<LaidRoom> rooms)
        => faces = rooms.SelectMany(r => r.Floor.Faces.Select(f => (Room: r, Face: f))).ToLookup(p => (p.Face.Side, p.Face.At));

    public IEnumerable<(LaidRoom Room, Face Face)> At(Side side, Length at) => faces[(side, at)];
}
