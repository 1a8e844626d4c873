using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells.Containers;

/// <summary>Where not to cut a container: castings, posts, rails, headers and sills of all four walls.</summary>
internal static class ContainerFrame
{
    public static IReadOnlyList<FrameMember> Of(ContainerSize size, Side doorEnd, Box outside, Length floor)
    {
        var top = floor + size.OutsideHeight;
        var members = new List<FrameMember>();
        foreach (var wall in Compass.All)
        {
            var (from, to) = wall.RunsEastWest() ? (outside.West, outside.East) : (outside.South, outside.North);
            AddCastings(members, wall, from, to, floor, top);
            if (wall.RunsEastWest())
            {
                AddSide(members, wall, doorEnd, from, to, floor, top);
                AddSecondPosts(members, size, wall, from, to, floor, top);
            }
            else if (wall == doorEnd)
            {
                AddDoorEnd(members, size, wall, from, to, floor, top);
            }
            else
            {
                AddFront(members, wall, from, to, floor, top);
            }
        }

        return members;
    }

    private static void AddCastings(List<FrameMember> members, Side wall, Length from, Length to, Length floor, Length top)
    {
        var run = wall.RunsEastWest() ? ContainerSteel.CastingLength : ContainerSteel.CastingWidth;
        foreach (var (bottom, level) in new[] { (floor, "bottom"), (top - ContainerSteel.CastingHeight, "top") })
        {
            string name = $"{wall.Word()} wall {level} casting";
            members.Add(
                Member(FramePart.Casting, name, wall, from, from + run, bottom, bottom
                    + ContainerSteel.CastingHeight, ContainerSteel.CastingOrigin));
            members.Add(
                Member(FramePart.Casting, name, wall, to - run, to, bottom, bottom
                    + ContainerSteel.CastingHeight, ContainerSteel.CastingOrigin));
        }
    }

    private static void AddSide(List<FrameMember> members, Side wall, Side doorEnd, Length from, Length to, Length floor, Length top)
    {
        var west = doorEnd == Side.West ? ContainerSteel.DoorPostOnSide : ContainerSteel.CastingLength;
        var east = doorEnd == Side.East ? ContainerSteel.DoorPostOnSide : ContainerSteel.CastingLength;
        members.Add(Member(FramePart.Post, $"{wall.Word()}-west corner post", wall, from, from + west, floor, top,
            doorEnd == Side.West ? ContainerSteel.DoorPostOrigin : ContainerSteel.PostOrigin));
        members.Add(Member(FramePart.Post, $"{wall.Word()}-east corner post", wall, to - east, to, floor, top,
            doorEnd == Side.East ? ContainerSteel.DoorPostOrigin : ContainerSteel.PostOrigin));
        var railTop = top - ContainerSteel.FittingAboveRoof;
        members.Add(
            Member(
                FramePart.TopRail, $"{wall.Word()} top rail", wall, from, to, railTop - ContainerSteel.TopRail, railTop,
                ContainerSteel.RailOrigin));
        members.Add(
            Member(FramePart.BottomRail, $"{wall.Word()} bottom rail", wall, from, to, floor, floor
                + ContainerSteel.BottomRail, ContainerSteel.RailOrigin));
    }

    private static void AddSecondPosts(
        List<FrameMember> members, ContainerSize size, Side wall, Length from, Length to, Length floor, Length top)
    {
        if (size.Feet != 45)
        {
            return;
        }

        var inset = ContainerSteel.SecondPostFromEnd;
        var run = ContainerSteel.CastingLength;
        members.Add(
            Member(FramePart.Post, $"{wall.Word()} west 40 ft post", wall, from + inset, from + inset
                + run, floor, top, ContainerSteel.SecondPostOrigin));
        members.Add(
            Member(
                FramePart.Post, $"{wall.Word()} east 40 ft post", wall, to - inset - run, to - inset, floor, top,
                ContainerSteel.SecondPostOrigin));
    }

    private static void AddDoorEnd(
        List<FrameMember> members, ContainerSize size, Side wall, Length from, Length to, Length floor, Length top)
    {
        var post = (size.OutsideWidth - size.DoorWidth) / 2;
        var bareFloor = floor + ContainerSteel.FloorTop;
        members.Add(
            Member(FramePart.Post, $"{wall.Word()}-south door post", wall, from, from + post, floor, top, ContainerSteel.DoorPostOrigin));
        members.Add(
            Member(FramePart.Post, $"{wall.Word()}-north door post", wall, to - post, to, floor, top, ContainerSteel.DoorPostOrigin));
        members.Add(Member(FramePart.Header, "door header", wall, from, to, bareFloor + size.DoorHeight, top, ContainerSteel.HeaderOrigin));
        members.Add(Member(FramePart.Sill, "door sill", wall, from, to, floor, bareFloor, ContainerSteel.SillOrigin));
    }

    private static void AddFront(List<FrameMember> members, Side wall, Length from, Length to, Length floor, Length top)
    {
        var post = ContainerSteel.CastingWidth;
        var railTop = top - ContainerSteel.FittingAboveRoof;
        members.Add(
            Member(FramePart.Post, $"{wall.Word()}-south corner post", wall, from, from + post, floor, top, ContainerSteel.PostOrigin));
        members.Add(Member(FramePart.Post, $"{wall.Word()}-north corner post", wall, to - post, to, floor, top, ContainerSteel.PostOrigin));
        members.Add(
            Member(
                FramePart.Header, "front header", wall, from, to, railTop - ContainerSteel.TopRail, railTop, ContainerSteel.FrontOrigin));
        members.Add(
            Member(FramePart.Sill, "front sill", wall, from, to, floor, floor + ContainerSteel.BottomRail, ContainerSteel.FrontOrigin));
    }

    private static FrameMember Member(
        FramePart part, string name, Side wall, Length from, Length to, Length bottom, Length top, string origin)
        => new(part, name, wall, from, to, bottom, top, origin);
}
