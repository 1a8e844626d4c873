using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Crane;

/// <summary>What one cross-member under the most heavily loaded metre of a container's floor carries.</summary>
internal static class CrossMember
{
    /// <summary>Middle to middle, m.</summary>
    private const double Pitch = 0.3;

    private static readonly Source Usual = new(
        "cross-members of a container's floor about 300 mm (12 in) apart; common practice, no source", Origin.CommonPractice);

    /// <summary>Null where nothing with a weight stands on the floor.</summary>
    public static Figure? Of(PlanFacts facts, Workings work)
    {
        if (facts.FloorLoad is not { Load: var load })
        {
            return null;
        }

        string apart = WorkingText.Long(Pitch * 1000, work.Units);
        return work.Of(
            "weight on one cross-member", Figure.WholePlan, load.Value * Pitch, Measure.Mass,
            "weight on a metre of the floor's length x distance of cross-members / 1 m",
            $"{load.Text} x {apart} / {WorkingText.Long(1000, work.Units)}", Usual, FigureInput.Of(load),
            FigureInput.Taken("distance of cross-members", apart, Usual));
    }
}
