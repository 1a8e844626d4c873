using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells.Sheds;

/// <summary>
/// Builds the shell of a shed with right-angled walls. Corners are those of the outside faces; heights count from the slab.
/// </summary>
public static class ShedShell
{
    /// <param name="outside">Outside faces, anywhere; moved so that the finished faces start at the origin.</param>
    /// <param name="eaves">From the slab to the ceiling side of the roof.</param>
    public static BuiltShell Build(Region outside, Length eaves, string name, ShellNotes notes)
    {
        var wall = notes.WallThickness ?? ShedBuild.Wall;
        var linings = notes.Linings;
        var depth = wall + linings.Walls;
        var corner = outside.Bounds;
        var moved = Moved(outside, -(corner.West + depth), -(corner.South + depth));
        var finished = Inset(moved, depth);
        var bottom = -linings.Floor;
        var shell = new Shell
        {
            Kind = ShellKind.Shed,
            Name = name,
            Outside = Outline(moved),
            BareInside = Outline(Inset(moved, wall)),
            Finished = Outline(finished),
            CeilingHeight = eaves - linings.Floor - linings.Ceiling,
            Datum = new PlanPoint(-depth, -depth),
            DatumHeight = bottom,
            Top = bottom + eaves,
            FloorBuildUp = linings.Floor,
            WallLining = linings.Walls,
            WallLiningOf = linings.WallsOf,
            CeilingLiningOf = linings.CeilingOf,
            FloorBuildUpOf = linings.FloorOf,
            CeilingLining = linings.Ceiling,
            GroundBelowFloor = notes.GroundBelowFloor,
            DoorEnd = null,
            TrueNorth = notes.TrueNorth,
            Frame = [
                .. moved.Faces.SelectMany(f => FrameOf(f, wall, bottom, bottom + eaves, notes.PostSpacing)
                    .Select(m => m with { At = f.At }))],
            Span = notes.Span,
        };
        return new BuiltShell(shell, finished, Compass.All.ToDictionary(s => s, _ => depth), null);
    }

    private static IEnumerable<FrameMember> FrameOf(Face face, Length wall, Length bottom, Length top, Length? spacing)
    {
        string name = face.Side.Word();
        yield return new FrameMember(FramePart.Post, $"{name} wall corner post", face.Side, face.From, face.From
            + wall, bottom, top, ShedBuild.PostOrigin);
        yield return new FrameMember(
            FramePart.Post, $"{name} wall corner post", face.Side, face.To - wall, face.To, bottom, top, ShedBuild.PostOrigin);
        yield return new FrameMember(
            FramePart.TopRail, $"{name} top plate", face.Side, face.From, face.To, top - ShedBuild.TopPlate, top, ShedBuild.PlateOrigin);
        foreach (var post in PostRow.Between(face.Side, face.From, face.To, spacing, wall, bottom, top, ShedBuild.WallPostOrigin))
        {
            yield return post;
        }
    }

    private static NetTopologySuite.Geometries.Polygon Outline(Region region)
        => region.ToPolygons() is [var first, ..] ? first : Shape.Factory.CreatePolygon();

    private static Region Moved(Region region, Length x, Length y)
        => Region.Of(region.Boxes.Select(b => new Box(b.West + x, b.South + y, b.East + x, b.North + y)));

    // Everything farther than the depth from every wall: less a band along each face, corners included.
    private static Region Inset(Region region, Length depth)
    {
        var inside = region;
        foreach (var face in region.Faces)
        {
            inside = inside.Less(Band(face, depth));
        }

        return inside;
    }

    private static Box Band(Face face, Length depth) => face.Side switch
    {
        Side.North => new Box(face.From - depth, face.At - depth, face.To + depth, face.At),
        Side.South => new Box(face.From - depth, face.At, face.To + depth, face.At + depth),
        Side.East => new Box(face.At - depth, face.From - depth, face.At, face.To + depth),
        _ => new Box(face.At, face.From - depth, face.At + depth, face.To + depth),
    };
}
