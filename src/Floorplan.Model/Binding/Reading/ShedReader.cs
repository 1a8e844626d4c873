using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Shells.Sheds;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads a shed: length x width x eaves height, or a list of corners and its eaves.</summary>
internal sealed class ShedReader(Reports reports)
{
    /// <summary>More corners than any small shed has; own bound.</summary>
    private const int MostCorners = 40;

    private const int LeastCorners = 4;

    public BuiltShell? Read(ShellStatement statement, ShellNotes notes)
    {
        if (statement.Doors is { } doors)
        {
            reports.Error(
                "shed-doors", "a shed has no doors of its own at an end", doors.Span,
                "take `doors` out and add a door, such as `door d1 receiving to outside, west wall, centred, "
                    + $"{reports.Example("1200 x 2100", "48 x 84")}`");
        }

        return statement.Corners.Count > 0 ? FromCorners(statement, notes) : FromSize(statement, notes);
    }

    private BuiltShell? FromSize(ShellStatement statement, ShellNotes notes)
    {
        if (statement.Size is not { Depth: { } width } size || (size.Height ?? statement.Eaves) is not { } eaves)
        {
            if (statement.Size is not null)
            {
                reports.Error(
                    "eaves-missing", "the height of the eaves is not said", statement.HeadSpan,
                    "write length x width x height, or add `eaves 2700`");
            }

            return null;
        }

        if (!ShellReader.IsSensible(size.Width.Value) || !ShellReader.IsSensible(width.Value) || !ShellReader.IsSensible(eaves.Value))
        {
            reports.Error("shell-size", "a shed needs a length, a width and a height above zero and below 1 km", size.Span);
            return null;
        }

        var outside = Region.Of(new Box(Length.Zero, Length.Zero, size.Width.Value, width.Value));
        return ShedShell.Build(outside, eaves.Value, "shed", notes);
    }

    private BuiltShell? FromCorners(ShellStatement statement, ShellNotes notes)
    {
        if (statement.Eaves is not { } eaves)
        {
            reports.Error("eaves-missing", "the height of the eaves is not said", statement.HeadSpan, "add a line such as `eaves 2700`");
            return null;
        }

        var first = statement.Corners[0].X.Span;
        if (statement.Corners.Count is < LeastCorners or > MostCorners)
        {
            reports.Error(
                "corner-count", $"a shed has {LeastCorners} to {MostCorners} corners, and {statement.Corners.Count} are given", first,
                "list them in order round the shed");
            return null;
        }

        var corners = statement.Corners.Select(c => new PlanPoint(c.X.Value, c.Y.Value)).ToList();
        if (CornerList.FirstSlanted(corners) is { } slanted)
        {
            var corner = statement.Corners[slanted];
            reports.Error(
                "slanted-wall",
                "the wall after this corner is neither west to east nor south to north",
                corner.X.Span.To(corner.Y.Span),
                "walls meet at right angles: let each corner share its x or its y with the next one, and the last with the first");
            return null;
        }

        var outside = CornerList.ToRegion(corners);
        if (outside.IsEmpty
            || !ShellReader.IsSensible(outside.Bounds.Width)
            || !ShellReader.IsSensible(outside.Bounds.Depth)
            || !ShellReader.IsSensible(eaves.Value))
        {
            reports.Error("shell-size", "a shed needs a length, a width and a height above zero and below 1 km", first);
            return null;
        }

        if (outside.ToPolygons() is not [{ NumInteriorRings: 0 }])
        {
            reports.Error("crossing-walls", "the walls of this shed cross each other", first, "list the corners in order round the shed");
            return null;
        }

        string name = corners.Count == LeastCorners
            ? "shed"
            : corners.Count == LeastCorners + 2
            ? "L-shaped shed"
            : "shed with several wings";
        return ShedShell.Build(outside, eaves.Value, name, notes);
    }
}
