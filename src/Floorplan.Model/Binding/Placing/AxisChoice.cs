using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Openings;

namespace Floorplan.Model.Binding.Placing;

/// <summary>
/// Decides which place term fixes which axis of a thing, before anything is computed: each axis once.
/// <c>centred</c> and <c>in line with</c> take the axis that is still free; so they may be written in any order.
/// </summary>
internal sealed class AxisChoice(NameTable names, Reports reports)
{
    public void Choose(Placeable thing)
    {
        foreach (var term in thing.Place.Where(IsKnown))
        {
            foreach (var axis in Fixed(term))
            {
                Set(thing, axis, term);
            }
        }

        foreach (var term in thing.Place.Where(IsFree))
        {
            SetFree(thing, term);
        }

        if (!thing.Failed && thing.Place.Count == 0)
        {
            thing.Failed = true;
            reports.Error(
                "place-missing", $"the place of `{thing.Id}` is not said", thing.Span,
                $"add such as `against north wall, {reports.Example("900", "36")} from west`, `corner south-east` or `at "
                    + $"{reports.Example("1200, 300", "48, 12")}`");
        }

        foreach (var axis in new[] { Axis.WestEast, Axis.SouthNorth })
        {
            if (!thing.Failed && thing.Fixes(axis) is null)
            {
                ReportMissing(thing, axis);
            }
        }
    }

    private IEnumerable<Axis> Fixed(PlaceTerm term) => term switch
    {
        AgainstTerm a => [AxisWords.Of(a.Wall.Side)],
        FromTerm f => [AxisWords.Of(f.Face.Side)],
        BesideTerm b => [AxisWords.Of(b.Direction.Side)],
        FlushTerm f => [AxisWords.Of(f.Edge.Side)],
        AtTerm or CornerTerm => [Axis.WestEast, Axis.SouthNorth],
        CentredOnTerm or InLineTerm when OpeningOf(term) is { } wall => [wall.Along],
        _ => [],
    };

    private bool IsKnown(PlaceTerm term) => term.Other() is not { } other || names.Find(other.Text) is not null;

    private bool IsFree(PlaceTerm term)
        => term is CentredTerm || (term is CentredOnTerm or InLineTerm && IsKnown(term) && OpeningOf(term) is null);

    private OpeningWall? OpeningOf(PlaceTerm term) => names.Find(term.Other()!.Text)?.Placeable?.Wall;

    private void SetFree(Placeable thing, PlaceTerm term)
    {
        bool x = thing.FixesX is null;
        bool y = thing.FixesY is null;
        if (!x && !y)
        {
            ReportTwice(thing, Axis.WestEast, thing.FixesX!, term);
            return;
        }

        if (x && y && term is InLineTerm)
        {
            return;
        }

        if (x)
        {
            Set(thing, Axis.WestEast, term);
        }

        if (y)
        {
            Set(thing, Axis.SouthNorth, term);
        }
    }

    private void Set(Placeable thing, Axis axis, PlaceTerm term)
    {
        if (thing.Fixes(axis) is { } before)
        {
            ReportTwice(thing, axis, before, term);
        }
        else if (axis == Axis.WestEast)
        {
            thing.FixesX = term;
        }
        else
        {
            thing.FixesY = term;
        }
    }

    private void ReportTwice(Placeable thing, Axis axis, PlaceTerm before, PlaceTerm again)
    {
        if (thing.Failed)
        {
            return;
        }

        thing.Failed = true;
        reports.Error(
            "place-fixed-twice",
            $"the place of `{thing.Id}` {axis.Phrase()} is fixed twice, by `{before.Words()}` and by `{again.Words()}`",
            again.Span,
            "take one of them out",
            new RelatedSpan(before.Span, "first fixed here"));
    }

    private void ReportMissing(Placeable thing, Axis axis)
    {
        thing.Failed = true;
        string some = reports.Example("300", "12");
        string ways = axis == Axis.WestEast
            ? $"add `against west wall`, `{some} from west`, `east of` another thing, `centred` or `in line with` another thing"
            : $"add `against south wall`, `{some} from south`, `north of` another thing, `centred` or `in line with` another thing";
        reports.Error("place-missing", $"the place of `{thing.Id}` {axis.Phrase()} is not said", thing.Span, ways);
    }
}
