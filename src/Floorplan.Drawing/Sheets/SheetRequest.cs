using Floorplan.Checks.Framework;
using Floorplan.Model;
using Floorplan.Model.Space;

namespace Floorplan.Drawing.Sheets;

/// <summary>What a sheet is drawn from.</summary>
/// <param name="Findings">All findings in the order of the report; their numbers on the sheet count from 1 in this order.</param>
public sealed record SheetRequest(Plan Plan, IFloorSpace Space, IReadOnlyList<Finding> Findings);
