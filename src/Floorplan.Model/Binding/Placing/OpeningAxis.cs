using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;

namespace Floorplan.Model.Binding.Placing;

/// <summary>An opening is fixed once, along its wall; across it the wall itself fixes it.</summary>
internal sealed class OpeningAxis(Reports reports)
{
    public void Choose(Placeable opening)
    {
        var along = opening.Wall!.Along;
        Relation? fixing = null;
        foreach (var relation in opening.Relations)
        {
            if (AxisOf(relation) is { } axis && axis != along)
            {
                opening.Failed = true;
                string low = along.Low().ToString().ToLowerInvariant();
                string high = along.High().ToString().ToLowerInvariant();
                reports.Error(
                    "place-across-wall",
                    $"`{opening.Id}` is in a wall that runs {along.Phrase()}, so `{AxisChoice.Words(relation)}` does not place it",
                    relation.Span,
                    relation is FromFace f
                        ? $"write `{Distance(f)} from {low}` or `{Distance(f)} from {high}`"
                        : $"write how far it is `from {low}` or `from {high}`");
                return;
            }

            if (fixing is not null)
            {
                opening.Failed = true;
                reports.Error(
                    "place-fixed-twice",
                    $"the place of `{opening.Id}` along its wall is fixed twice, by `{AxisChoice.Words(fixing)}` and by `{AxisChoice.Words(relation)}`",
                    relation.Span,
                    "take one of them out",
                    new RelatedSpan(fixing.Span, "first fixed here"));
                return;
            }

            fixing = relation;
        }

        if (fixing is null)
        {
            opening.Failed = true;
            string low = along.Low().ToString().ToLowerInvariant();
            reports.Error("place-missing", $"the place of `{opening.Id}` along its wall is not said", opening.Span, $"add `500 from {low}`, `centred` or `centred on` another thing");
            return;
        }

        if (along == Axis.WestEast)
        {
            opening.FixesX = fixing;
        }
        else
        {
            opening.FixesY = fixing;
        }
    }

    private string Distance(FromFace relation) => LengthText.Dimension(relation.Distance, reports.Units);

    private static Axis? AxisOf(Relation relation) => relation switch
    {
        Against a => AxisWords.Of(a.Wall),
        FromFace f => AxisWords.Of(f.Face),
        Beyond b => AxisWords.Of(b.Direction),
        Flush f => AxisWords.Of(f.Edge),
        _ => null,
    };
}
