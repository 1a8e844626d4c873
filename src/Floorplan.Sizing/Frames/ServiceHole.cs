using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;

namespace Floorplan.Sizing.Frames;

/// <summary>A hole for a pipe, a cable, a fan or a drain, from the steel datum to its middle.</summary>
/// <param name="Wall">The wall it goes through; null in the floor and the roof.</param>
/// <param name="X">East of the datum; in a wall along it, from its west or south end.</param>
/// <param name="Y">North of the datum; in a wall up from it.</param>
/// <param name="Width">Diameter where <paramref name="Depth"/> is null. Null when the plan does not say it; the hole is made to fit
/// what is bought.</param>
/// <param name="Depth">The other side of a rectangle: north to south, in a wall up.</param>
public sealed record ServiceHole(ServicePoint Point, HoleSurface Surface, ShellWall? Wall, Length X, Length Y, Length? Width, Length? Depth)
{
    /// <summary>
    /// A point on a wall that is farther than this from an outside face goes through an inner wall, mm: lining and insulation are
    /// thinner; own assumption.
    /// </summary>
    private const double ThickestWall = 400;

    /// <summary>Floor, roof, then wall by wall; each from the west or south. Holes through inner walls are not among them.</summary>
    public static IReadOnlyList<ServiceHole> Of(Plan plan)
    {
        var walls = ShellWall.Of(plan.Shell);
        return
        [
            .. plan.Services.Select(s => Of(s, plan.Shell, walls)).OfType<ServiceHole>()
                .OrderBy(h => h.Surface).ThenBy(h => h.Wall is { } wall ? walls.ToList().IndexOf(wall) : 0).ThenBy(h => h.X)
                    .ThenBy(h => h.Y),
        ];
    }

    private static ServiceHole? Of(ServicePoint point, Shell shell, IReadOnlyList<ShellWall> walls) => point switch
    {
        Drain { Form: DrainForm.Floor } drain => OnPlan(drain, drain.Size, null, HoleSurface.Floor, shell),
        Hole { Wall: { } side, Height: { } height } hole => InWall(hole, side, height, shell, walls),
        Hole { Through: { } through } hole
            => OnPlan(hole, hole.Size, hole.SizeAcross, through == HoleThrough.Roof ? HoleSurface.Roof : HoleSurface.Floor, shell),
        _ => null,
    };

    private static ServiceHole OnPlan(ServicePoint point, Length? width, Length? depth, HoleSurface surface, Shell shell) =>
        new(point, surface, null, point.At.X - shell.Datum.X, point.At.Y - shell.Datum.Y, width, depth);

    private static ServiceHole? InWall(Hole point, Side side, Length height, Shell shell, IReadOnlyList<ShellWall> walls)
    {
        var (along, across) = side.RunsEastWest() ? (point.At.X, point.At.Y) : (point.At.Y, point.At.X);
        var wall = walls
            .Where(w => w.Side == side && w.From <= along && along <= w.To && Length.Abs(w.At - across).Millimetres <= ThickestWall)
            .MinBy(w => Length.Abs(w.At - across).Millimetres);
        return wall is null
            ? null
            : new ServiceHole(point, HoleSurface.Wall, wall, along - wall.From, height - shell.DatumHeight, point.Size, point.SizeAcross);
    }
}

/// <summary>What a hole goes through.</summary>
public enum HoleSurface
{
    Floor,
    Roof,
    Wall,
}
