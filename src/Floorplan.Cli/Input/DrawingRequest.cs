using Floorplan.Arrange.CuttingStock;
using Floorplan.Drawing.Sheets;
using Floorplan.Model.Comparing;
using Floorplan.Sizing.Frames;

namespace Floorplan.Cli.Input;

/// <summary>What the sheets of an examined plan are drawn from, the saw plan of its frames included.</summary>
internal static class DrawingRequest
{
    /// <param name="since">The revision that changes are clouded against; null for none.</param>
    public static SheetRequest Of(Examination examination, Checked? since = null)
    {
        var plan = examination.Plan!;
        return new SheetRequest(examination.Facts!, examination.Findings)
        {
            Stock = StockCutter.Cut(examination.Facts!.CutList, StockPlan.UsualBar(plan.Units), StockPlan.UsualKerf(plan.Units)),
            Changes = since?.Examination?.Plan is { } was ? PlanComparison.Of(was, plan).Changes : [],
            Since = since is null ? "" : Name(since),
        };
    }

    /// <summary>By its last revision, when that says more than the file's name.</summary>
    private static string Name(Checked since) => since.Examination?.Plan?.Head.Revisions.LastOrDefault() is { Mark.Length: > 0 } last
        ? $"revision {last.Mark}, {Path.GetFileName(since.Input.Name)}"
        : Path.GetFileName(since.Input.Name);
}
