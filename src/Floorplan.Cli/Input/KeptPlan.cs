using Floorplan.Drawing.Sheets.Keeping;
using Floorplan.Sizing;

namespace Floorplan.Cli.Input;

/// <summary>What came of one file when it was drawn before, so that the next drawing takes over what is still right.</summary>
internal sealed class KeptPlan
{
    /// <summary>Of the last text without errors; null before the first.</summary>
    public PlanFacts? Facts { get; set; }

    public KeptSheets Sheets { get; } = new();
}
