using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells.Trailers;

/// <summary>
/// Builds the shell of a box trailer from its outside size; the height is that of the box, underside of its floor frame to roof.
/// </summary>
public static class TrailerShell
{
    /// <param name="hitch">West or east; null takes the end away from the doors.</param>
    public static BuiltShell Build(Length length, Length width, Length height, int axles, Side? hitch, ShellNotes notes)
    {
        var doorEnd = notes.DoorEnd ?? hitch?.Opposite() ?? Side.West;
        var hitchEnd = hitch ?? doorEnd.Opposite();
        var wall = notes.WallThickness ?? TrailerBuild.Wall;
        var linings = notes.Linings;
        var box =
            new BoxShell(length, width, height, wall, wall, wall, TrailerBuild.Floor, height - TrailerBuild.Floor - TrailerBuild.Roof);
        var door = new ShellDoor(
            doorEnd,
            width - (TrailerBuild.CornerPost * 2),
            height - TrailerBuild.Floor - TrailerBuild.Header,
            -linings.Floor);
        var shell = box.ToShell(ShellKind.Trailer, "box trailer", notes) with
        {
            DoorEnd = doorEnd,
            HitchEnd = hitchEnd,
            Axles = axles,
            Frame = TrailerFrame.Of(box, door, hitchEnd, axles, notes),
        };
        return new BuiltShell(shell, Region.Of(box.FinishedBox(linings)), box.Depths(linings), door);
    }
}
