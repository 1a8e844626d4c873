using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Faces;

/// <summary>
/// One outside wall unrolled flat: <c>u</c> to the right as seen, from the left end of the wall, <c>v</c> up from the underside of the
/// shell, both in mm of the real thing.
/// </summary>
/// <param name="FromOutside">Seen from outside; else from inside.</param>
internal sealed record WallFace(Shell Shell, ShellWall Wall, bool FromOutside)
{
    /// <summary>West or south is at the right.</summary>
    public bool IsMirrored => Wall.Side is Side.North or Side.West == FromOutside;

    public Length Width => Wall.Run;

    public Length Height => Shell.Top - Shell.DatumHeight;

    public Envelope Extent => new(0, Width.Millimetres, 0, Height.Millimetres);

    /// <summary>The end that carries the datum of the wall: its west or south end.</summary>
    public Length DatumU => U(Wall.From);

    /// <summary>From a plan coordinate along the wall.</summary>
    public Length U(Length along) => IsMirrored ? Wall.To - along : along - Wall.From;

    /// <summary>From a height above the finished floor.</summary>
    public Length V(Length height) => height - Shell.DatumHeight;

    public Box Rectangle(Length alongFrom, Length alongTo, Length bottom, Length top)
    {
        var (a, b) = (U(alongFrom), U(alongTo));
        return new Box(Length.Min(a, b), V(bottom), Length.Max(a, b), V(top));
    }

    public Box Rectangle(FrameMember member) => Rectangle(member.From, member.To, member.Bottom, member.Top);

    /// <summary>Members of this wall; a shed may have two walls that face the same way.</summary>
    public IEnumerable<FrameMember> Members => Shell.Frame.Where(m => m.Wall == Wall.Side && (m.At is not { } at || at == Wall.At));

    /// <summary>The finished inside of the wall.</summary>
    public ShellWall Finished => Wall.FinishedIn(Shell);

    public string Title
        => $"{char.ToUpperInvariant(Wall.Side.Word()[0])}{Wall.NameIn(Shell)[1..]}, seen from {(FromOutside ? "outside" : "inside")}";
}
