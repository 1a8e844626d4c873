using Floorplan.Arrange.CuttingStock;
using Floorplan.Drawing.Sheets;
using Floorplan.Sizing.Frames;

namespace Floorplan.Cli.Input;

/// <summary>What the sheets of an examined plan are drawn from, the saw plan of its frames included.</summary>
internal static class DrawingRequest
{
    public static SheetRequest Of(Examination examination)
    {
        var plan = examination.Plan!;
        var list = CutList.Of(CutOuts.Of(plan));
        return new SheetRequest(plan, examination.Space!, examination.Findings)
        {
            Stock = StockCutter.Cut(list, StockPlan.UsualBar(plan.Units), StockPlan.UsualKerf(plan.Units)),
        };
    }
}
