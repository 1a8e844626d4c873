using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Ground;

/// <summary>What a container stands on, and what holds it in wind.</summary>
internal static class GroundSizes
{
    /// <summary>Null for what is no container: a shed has its own foundation, a trailer its wheels and jacks.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        if (plan.Shell.Kind != ShellKind.Container)
        {
            return null;
        }

        var work = new Workings(plan.Units);
        var (rows, tables, missing) = (new List<SizeRow>(), new List<SizeTable>(), new List<NotSaid>());
        if (CornerBlocks.Of(facts, work) is { } blocks)
        {
            rows.Add(SizeRow.Of(
                "area under a corner", blocks.Area, $"{blocks.Corner.Text} at work on ground that bears {blocks.Bearing.Text}"));
            rows.Add(new SizeRow("block", $"{blocks.Side.Text} square", "four of them, under the corner castings", blocks.Side));
            tables.Add(blocks.Soils);
        }

        if (WindOnBox.Of(facts, work) is { } wind)
        {
            Add(wind, rows);
        }
        else if (plan.Head.Wind is null)
        {
            string write = (plan.Head.Code, plan.Units) switch
            {
                (CodeChoice.Us, _) => "wind 115 mph",
                (_, UnitSystem.Feet) => "wind 58 mph",
                _ => "wind 26 m/s",
            };
            missing.Add(new NotSaid("wind speed", write, plan.Head.Span));
        }

        return new SizedSubject("Ground", rows)
        {
            Figures = work.Figures,
            Tables = tables,
            Missing = missing,
            Cautions =
            [
                "Have the ground looked at: frost, water, slopes and filled ground need more than a block. What blocks and tie-downs "
                    + "have to carry is for the building office or an engineer to say; these figures have no factors of a code in them "
                    + "but those that they name.",
            ],
        };
    }

    private static void Add(WindOnBox wind, List<SizeRow> rows)
    {
        string asked = WindOnBox.Asked.ToString(CultureInfo.InvariantCulture);
        rows.Add(SizeRow.Of("wind on the long side", wind.Push, $"pressure {wind.Pressure.Text}"));
        rows.Add(SizeRow.Of(
            "against falling over", wind.Overturning, $"empty, {asked} is asked; falls over in wind of {wind.FallsAt.Text}"));
        rows.Add(SizeRow.Of(
            "friction that it needs", wind.Friction,
            $"{WindOnBox.Ground.ToString(CultureInfo.InvariantCulture)} is there on sand or silt"));
        rows.Add(SizeRow.Of(
            "tie-downs", wind.HoldDown, $"down along the windward side; {wind.HoldStill.Text} level against sliding"));
    }
}
