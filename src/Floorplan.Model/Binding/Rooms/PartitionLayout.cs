using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>Finds the walls between rooms: where a face of one looks at a face of another across the thickness of a partition.</summary>
internal static class PartitionLayout
{
    /// <summary>What a partition is said to part when there is no room behind it.</summary>
    private const string NoRoom = "outside";

    public static IReadOnlyList<Partition> Of(IReadOnlyList<LaidRoom> rooms, Region shell, Length thickness, Length height)
    {
        if (thickness <= Length.Zero)
        {
            return [];
        }

        var wall = rooms.Aggregate(shell, (rest, room) => room.Floor.Boxes.Aggregate(rest, (r, b) => r.Less(b)));
        var faces = new FaceIndex(rooms);
        var found = new Dictionary<(string, string), List<Box>>();
        var order = new List<(string, string)>();
        foreach (var room in rooms)
        {
            foreach (var face in room.Floor.Faces)
            {
                foreach (var (other, from, to) in Beyond(faces, shell, room, face, thickness))
                {
                    var key = found.ContainsKey((other, room.Id)) ? (other, room.Id) : (room.Id, other);
                    if (!found.TryGetValue(key, out var boxes))
                    {
                        found[key] = boxes = [];
                        order.Add(key);
                    }

                    boxes.Add(Behind(face with { From = from - thickness, To = to + thickness }, thickness));
                }
            }
        }

        return [.. order.SelectMany(key => Pieces(key, found[key], ref wall, thickness, height))];
    }

    private static List<Partition> Pieces((string A, string B) pair, List<Box> boxes, ref Region wall, Length thickness, Length height)
    {
        var own = new List<Box>();
        foreach (var box in boxes)
        {
            own.AddRange(wall.Within(box).Boxes);
            wall = wall.Less(box);
        }

        return [.. Region.Of(own).ToPolygons().Select(p => new Partition(pair.A, pair.B, p, thickness, height))];
    }

    // North and east faces see their neighbours, so that each pair comes once; a face that nobody looks back at is a lone wall.
    private static IEnumerable<(string Other, Length From, Length To)> Beyond(
        FaceIndex faces, Region shell, LaidRoom room, Face face, Length thickness)
    {
        if (IsShellFace(shell, face))
        {
            yield break;
        }

        bool first = face.Side is Side.North or Side.East;
        var opposite = face.Side.Opposite();
        var at = first ? face.At + thickness : face.At - thickness;
        bool seen = false;
        foreach (var (other, facing) in faces.At(opposite, at))
        {
            var from = Length.Max(face.From, facing.From);
            var to = Length.Min(face.To, facing.To);
            if (from < to)
            {
                seen = true;
                if (first)
                {
                    yield return (other.Id, from, to);
                }
            }
        }

        if (!seen)
        {
            yield return (NoRoom, face.From, face.To);
        }
    }

    private static bool IsShellFace(Region shell, Face face)
        => shell.Faces.Any(f => f.Side == face.Side && f.At == face.At && f.From <= face.From && f.To >= face.To);

    private static Box Behind(Face face, Length thickness) => face.Side switch
    {
        Side.North => new Box(face.From, face.At, face.To, face.At + thickness),
        Side.South => new Box(face.From, face.At - thickness, face.To, face.At),
        Side.East => new Box(face.At, face.From, face.At + thickness, face.To),
        _ => new Box(face.At - thickness, face.From, face.At, face.To),
    };
}
