using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Stations;

/// <summary>Whether a station has a size that it can be placed with; reports what is wrong with it.</summary>
/// <param name="shell">The inside of the shell.</param>
internal sealed class StationSize(Box shell, Reports reports)
{
    public bool IsGiven(StationDraft station)
    {
        if (station.Size is not { } size)
        {
            reports.Error(
                "size-missing", $"the size of `{station.Id}` is not said", station.Span,
                $"add a line such as `size {reports.Example("1200 x 600 x 900", "48 x 24 x 36")}`, or take a kind that has one");
            return false;
        }

        if (size.Width <= Length.Zero || size.Depth <= Length.Zero || size.Height is { Nanometres: <= 0 })
        {
            reports.Error("size-not-positive", $"`{station.Id}` has a side of no length", station.Span, "give it a size above zero");
            return false;
        }

        return Fits(station, size.Width, size.Depth);
    }

    // Almost always a unit forgotten: told here, it does not come back as an overlap with everything in the plan.
    private bool Fits(StationDraft station, Length width, Length depth)
    {
        var (longer, shorter) = width > depth ? (width, depth) : (depth, width);
        var (length, breadth) = shell.Width > shell.Depth ? (shell.Width, shell.Depth) : (shell.Depth, shell.Width);
        if (longer <= length && shorter <= breadth)
        {
            return true;
        }

        reports.Error(
            "larger-than-shell",
            $"`{station.Id}` is {reports.Text(width)} x {reports.Text(depth)}, and the inside of the shell is "
                + $"{reports.Text(shell.Width)} x {reports.Text(shell.Depth)}",
            station.Span,
            $"check its size and the units: a bare number is {reports.Example("millimetres", "inches")} in this plan, and "
                + $"`{reports.Example("48 in", "1200 mm")}` says another unit");
        return false;
    }
}
