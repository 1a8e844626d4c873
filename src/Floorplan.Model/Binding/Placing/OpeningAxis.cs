using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Placing;

/// <summary>An opening is fixed once, along its wall; across it the wall itself fixes it.</summary>
internal sealed class OpeningAxis(Reports reports)
{
    public void Choose(Placeable opening)
    {
        var along = opening.Wall!.Along;
        PlaceTerm? fixing = null;
        foreach (var term in opening.Place)
        {
            if (term is AtTerm || (AxisOf(term) is { } axis && axis != along))
            {
                opening.Failed = true;
                string low = along.Low().Word();
                string high = along.High().Word();
                reports.Error(
                    "place-across-wall",
                    $"`{opening.Id}` is in a wall that runs {along.Phrase()}, so `{term.Words()}` does not place it",
                    term.Span,
                    term is FromTerm f
                        ? $"write `{Distance(f)} from {low}` or `{Distance(f)} from {high}`"
                        : $"write how far it is `from {low}` or `from {high}`");
                return;
            }

            if (fixing is not null)
            {
                opening.Failed = true;
                reports.Error(
                    "place-fixed-twice",
                    $"the place of `{opening.Id}` along its wall is fixed twice, by `{fixing.Words()}` and by `{term.Words()}`",
                    term.Span,
                    "take one of them out",
                    new RelatedSpan(fixing.Span, "first fixed here"));
                return;
            }

            fixing = term;
        }

        if (fixing is null)
        {
            opening.Failed = true;
            string low = along.Low().Word();
            reports.Error(
                "place-missing", $"the place of `{opening.Id}` along its wall is not said", opening.Span,
                $"add `{reports.Example("500", "20")} from {low}`, `centred` or `centred on` another thing");
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

    private string Distance(FromTerm term) => QuantityText.Bare(term.Distance.Value, reports.Units);

    private static Axis? AxisOf(PlaceTerm term) => term switch
    {
        AgainstTerm a => AxisWords.Of(a.Wall.Side),
        FromTerm f => AxisWords.Of(f.Face.Side),
        BesideTerm b => AxisWords.Of(b.Direction.Side),
        FlushTerm f => AxisWords.Of(f.Edge.Side),
        _ => null,
    };
}
