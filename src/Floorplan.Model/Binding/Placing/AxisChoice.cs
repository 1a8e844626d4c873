using Floorplan.Language.Diagnostics;

namespace Floorplan.Model.Binding.Placing;

/// <summary>
/// Decides which relation fixes which axis of a thing, before anything is computed: each axis once.
/// <c>centred</c> and <c>in line with</c> take the axis that is still free; so they may be written in any order.
/// </summary>
internal sealed class AxisChoice(NameTable names, Reports reports)
{
    public void Choose(Placeable thing)
    {
        foreach (var relation in thing.Relations.Where(r => r is not ToOther other || names.Find(other.Other) is not null))
        {
            foreach (var axis in Fixed(relation))
            {
                Set(thing, axis, relation);
            }
        }

        foreach (var relation in thing.Relations.Where(r => IsFree(r)))
        {
            SetFree(thing, relation);
        }

        foreach (var axis in new[] { Axis.WestEast, Axis.SouthNorth })
        {
            if (!thing.Failed && thing.Fixes(axis) is null)
            {
                ReportMissing(thing, axis);
            }
        }
    }

    private IEnumerable<Axis> Fixed(Relation relation) => relation switch
    {
        Against a => [AxisWords.Of(a.Wall)],
        FromFace f => [AxisWords.Of(f.Face)],
        Beyond b => [AxisWords.Of(b.Direction)],
        Flush f => [AxisWords.Of(f.Edge)],
        AtPoint or InCorner => [Axis.WestEast, Axis.SouthNorth],
        CentredOn or InLineWith when OpeningOf((ToOther)relation) is { } wall => [wall.Along],
        _ => [],
    };

    private bool IsFree(Relation relation)
        => relation is Centred || (relation is CentredOn or InLineWith && names.Find(((ToOther)relation).Other) is { } && OpeningOf((ToOther)relation) is null);

    private OpeningWall? OpeningOf(ToOther relation) => names.Find(relation.Other)?.Placeable?.Wall;

    private void SetFree(Placeable thing, Relation relation)
    {
        bool x = thing.FixesX is null;
        bool y = thing.FixesY is null;
        if (!x && !y)
        {
            ReportTwice(thing, Axis.WestEast, thing.FixesX!, relation);
            return;
        }

        if (x && y && relation is InLineWith)
        {
            return;
        }

        if (x)
        {
            Set(thing, Axis.WestEast, relation);
        }

        if (y)
        {
            Set(thing, Axis.SouthNorth, relation);
        }
    }

    private void Set(Placeable thing, Axis axis, Relation relation)
    {
        if (thing.Fixes(axis) is { } before)
        {
            ReportTwice(thing, axis, before, relation);
        }
        else if (axis == Axis.WestEast)
        {
            thing.FixesX = relation;
        }
        else
        {
            thing.FixesY = relation;
        }
    }

    private void ReportTwice(Placeable thing, Axis axis, Relation before, Relation again)
    {
        if (thing.Failed)
        {
            return;
        }

        thing.Failed = true;
        reports.Error(
            "place-fixed-twice",
            $"the place of `{thing.Id}` {axis.Phrase()} is fixed twice, by `{Words(before)}` and by `{Words(again)}`",
            again.Span,
            "take one of them out",
            new RelatedSpan(before.Span, "first fixed here"));
    }

    private void ReportMissing(Placeable thing, Axis axis)
    {
        thing.Failed = true;
        if (thing.Relations.Any(r => r is ToOther other && names.Find(other.Other) is null))
        {
            return;
        }

        string ways = axis == Axis.WestEast
            ? "add `against west wall`, `300 from west`, `east of` another thing, `centred` or `in line with` another thing"
            : "add `against south wall`, `300 from south`, `north of` another thing, `centred` or `in line with` another thing";
        reports.Error("place-missing", $"the place of `{thing.Id}` {axis.Phrase()} is not said", thing.Span, ways);
    }

    /// <summary>The relation as written, on one line and of bounded length.</summary>
    internal static string Words(Relation relation)
    {
        const int Longest = 60;
        string text = string.Join(' ', relation.Span.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return text.Length <= Longest ? text : text[..Longest] + "...";
    }
}
