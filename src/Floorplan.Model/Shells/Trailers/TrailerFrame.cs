using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells.Trailers;

/// <summary>Where not to cut a trailer: corner and wall posts, rails, the rear header and sill, and the wheel arches.</summary>
internal static class TrailerFrame
{
    public static IReadOnlyList<FrameMember> Of(BoxShell box, ShellDoor door, Side hitchEnd, int axles, ShellNotes notes)
    {
        var outside = box.OutsideBox(notes.Linings);
        var bottom = box.Base(notes.Linings);
        var top = bottom + box.OutsideHeight;
        var bareFloor = bottom + box.Floor;
        var members = new List<FrameMember>();
        foreach (var wall in Compass.All)
        {
            var (from, to) = wall.RunsEastWest() ? (outside.West, outside.East) : (outside.South, outside.North);
            var post = TrailerBuild.CornerPost;
            string name = wall.Word();
            members.Add(
                new FrameMember(FramePart.Post, $"{name} wall corner post", wall, from, from + post, bottom, top, TrailerBuild.PostOrigin));
            members.Add(
                new FrameMember(FramePart.Post, $"{name} wall corner post", wall, to - post, to, bottom, top, TrailerBuild.PostOrigin));
            if (wall == door.End)
            {
                members.Add(
                    new FrameMember(FramePart.Header, "rear header", wall, from, to, bareFloor
                        + door.Height, top, TrailerBuild.HeaderOrigin));
                members.Add(new FrameMember(FramePart.Sill, "rear sill", wall, from, to, bottom, bareFloor, TrailerBuild.RailOrigin));
                continue;
            }

            members.Add(
                new FrameMember(
                    FramePart.TopRail, $"{name} top rail", wall, from, to, top - TrailerBuild.TopRail, top, TrailerBuild.RailOrigin));
            members.Add(
                new FrameMember(FramePart.BottomRail, $"{name} bottom rail", wall, from, to, bottom, bareFloor, TrailerBuild.RailOrigin));
            if (wall.RunsEastWest())
            {
                members.AddRange(
                    PostRow.Between(wall, from, to, notes.PostSpacing, TrailerBuild.WallPost, bottom, top, TrailerBuild.WallPostOrigin));
                AddArch(members, wall, from, to, hitchEnd, axles, notes.Loads, bottom, bareFloor);
            }
        }

        return members;
    }

    private static void AddArch(
        List<FrameMember> members, Side wall, Length from, Length to, Side hitchEnd, int axles, ShellLoads loads, Length bottom,
        Length bareFloor)
    {
        if (axles < 1)
        {
            return;
        }

        var fromHitch = loads.AxlesFromHitch - loads.HitchAhead ?? (to - from) * TrailerBuild.AxlePercentFromHitch / 100;
        var middle = hitchEnd == Side.West ? from + fromHitch : to - fromHitch;
        var half = TrailerBuild.ArchPerAxle * axles / 2;
        members.Add(new FrameMember(
            FramePart.WheelArch,
            $"{wall.Word()} wheel arch",
            wall,
            Length.Max(from, middle - half),
            Length.Min(to, middle + half),
            bottom,
            bareFloor + TrailerBuild.ArchAboveFloor,
            loads.AxlesFromHitch is null ? TrailerBuild.ArchOrigin : TrailerBuild.KnownArchOrigin));
    }
}
