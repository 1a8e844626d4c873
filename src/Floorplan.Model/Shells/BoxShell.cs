using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells;

/// <summary>The arithmetic that containers and trailers share: a box in a box, told from its outside.</summary>
/// <param name="West">Thickness of the bare west wall, and so on.</param>
/// <param name="Floor">From the underside of the box to the top of its bare floor.</param>
/// <param name="InsideHeight">From the top of the bare floor to the bare ceiling.</param>
internal sealed record BoxShell(
    Length OutsideLength, Length OutsideWidth, Length OutsideHeight,
    Length West, Length East, Length Sides, Length Floor, Length InsideHeight)
{
    public Box OutsideBox(Linings linings)
    {
        var west = -(West + linings.Walls);
        var south = -(Sides + linings.Walls);
        return new Box(west, south, west + OutsideLength, south + OutsideWidth);
    }

    public Shell ToShell(ShellKind kind, string name, ShellNotes notes)
    {
        var linings = notes.Linings;
        var outside = OutsideBox(linings);
        var bare = new Box(outside.West + West, outside.South + Sides, outside.East - East, outside.North - Sides);
        return new Shell
        {
            Kind = kind,
            Name = name,
            Outside = outside.ToPolygon(),
            BareInside = bare.ToPolygon(),
            Finished = FinishedBox(linings).ToPolygon(),
            CeilingHeight = InsideHeight - linings.Floor - linings.Ceiling,
            Datum = new PlanPoint(outside.West, outside.South),
            DatumHeight = Base(linings),
            Top = Base(linings) + OutsideHeight,
            FloorBuildUp = linings.Floor,
            WallLining = linings.Walls,
            WallLiningOf = linings.WallsOf,
            CeilingLiningOf = linings.CeilingOf,
            FloorBuildUpOf = linings.FloorOf,
            CeilingLining = linings.Ceiling,
            GroundBelowFloor = notes.GroundBelowFloor,
            DoorEnd = notes.DoorEnd,
            TrueNorth = notes.TrueNorth,
            Loads = notes.Loads,
            Span = notes.Span,
        };
    }

    public Box FinishedBox(Linings linings) => new(
        Length.Zero,
        Length.Zero,
        OutsideLength - West - East - (linings.Walls * 2),
        OutsideWidth - (Sides * 2) - (linings.Walls * 2));

    /// <summary>The underside of the box above the finished floor.</summary>
    public Length Base(Linings linings) => -(Floor + linings.Floor);

    public Dictionary<Side, Length> Depths(Linings linings) => new()
    {
        [Side.North] = Sides + linings.Walls,
        [Side.South] = Sides + linings.Walls,
        [Side.East] = East + linings.Walls,
        [Side.West] = West + linings.Walls,
    };
}
