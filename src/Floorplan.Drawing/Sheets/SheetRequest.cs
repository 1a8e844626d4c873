using Floorplan.Checks.Findings;
using Floorplan.Model;
using Floorplan.Model.Comparing;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets;

/// <summary>What a sheet is drawn from.</summary>
/// <param name="Facts">The same object that the rules judged: sheets draw what it holds and compute nothing that a rule or another
/// sheet shows too.</param>
/// <param name="Findings">All findings in the order of the report; their numbers on the sheet count from 1 in this order.</param>
public sealed record SheetRequest(PlanFacts Facts, IReadOnlyList<Finding> Findings)
{
    public Plan Plan => Facts.Plan;

    public FloorSpace Space => Facts.Space;

    /// <summary>Which rows stand round sheet 1: with all of them some plans would be smaller than is of use.</summary>
    public OuterRows Rows { get; init; }

    /// <summary>How the frames are cut from stock bars, one a section; empty leaves it off the sheets.</summary>
    public IReadOnlyList<StockPlan> Stock { get; init; } = [];

    /// <summary>What differs from another revision, to be clouded and listed; empty draws the plan alone.</summary>
    public IReadOnlyList<PlanChange> Changes { get; init; } = [];

    /// <summary>That revision, as a person names it: <c>revision A</c> or a file name.</summary>
    public string Since { get; init; } = "";
}
