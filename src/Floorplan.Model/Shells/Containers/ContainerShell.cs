using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells.Containers;

/// <summary>Builds the shell of a freight container, lying west to east.</summary>
public static class ContainerShell
{
    /// <param name="notes">Its door end is west or east; null leaves the doors in the west end.</param>
    public static BuiltShell Build(ContainerSize size, ShellNotes notes)
    {
        var doorEnd = notes.DoorEnd ?? Side.West;
        var box = BoxOf(size, doorEnd);
        var linings = notes.Linings;
        var shell = box.ToShell(ShellKind.Container, size.Name, notes) with
        {
            DoorEnd = doorEnd,
            Frame = ContainerFrame.Of(size, doorEnd, box.OutsideBox(linings), box.Base(linings)),
        };
        return new BuiltShell(
            shell,
            Region.Of(box.FinishedBox(linings)),
            box.Depths(linings),
            new ShellDoor(doorEnd, size.DoorWidth, size.DoorHeight, -linings.Floor));
    }

    private static BoxShell BoxOf(ContainerSize size, Side doorEnd)
    {
        var wall = ContainerSteel.Wall(size);
        var doorWall = size.OutsideLength - size.InsideLength - wall;
        return new BoxShell(
            size.OutsideLength,
            size.OutsideWidth,
            size.OutsideHeight,
            doorEnd == Side.West ? doorWall : wall,
            doorEnd == Side.West ? wall : doorWall,
            wall,
            ContainerSteel.FloorTop,
            size.InsideHeight);
    }
}
