using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets.Elevations;
using Floorplan.Drawing.Sheets.FlowAndHygiene;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Drawing.Sheets.Inspection;
using Floorplan.Drawing.Sheets.OpeningsAndFrames;
using Floorplan.Drawing.Sheets.PowerLightAir;
using Floorplan.Drawing.Sheets.Schedules;
using Floorplan.Drawing.Sheets.Stations;
using Floorplan.Drawing.Sheets.WaterAndDrainage;

namespace Floorplan.Drawing.Sheets;

/// <summary>All sheets, and the drawing of them.</summary>
public static class SheetSet
{
    public static IReadOnlyList<Sheet> All { get; } =
        [
            new GeneralArrangementSheet(), new FlowAndHygieneSheet(), new StationsSheet(), new WaterAndDrainageSheet(),
            new PowerLightAirSheet(), new OpeningsAndFramesSheet(), new ElevationsSheet(), new SchedulesSheet(), new ChecksSheet()];

    /// <summary>Draws sheets in order of number. A plan with findings is drawn with them marked.</summary>
    /// <param name="numbers">Which sheets; null draws all. Numbers without a sheet are passed over.</param>
    public static DrawnSet Make(SheetRequest request, IReadOnlyCollection<int>? numbers = null)
    {
        List<Sheet> chosen = [.. All.Where(s => numbers is null || numbers.Contains(s.Number))];
        var first = All[0].Content(request, SheetHead.For(request, All[0], All.Count));
        double scale = SetScale.Of(request, first);

        // The floor's space is for one thread, so contents are gathered one after another; the drawing of each needs no other.
        List<SheetContent> contents =
            [.. chosen.Select(s => s == All[0] ? first : s.Content(request, SheetHead.For(request, s, All.Count)))];
        var made = contents.AsParallel().AsOrdered().Where(c => c != first)
            .Select(c => SheetComposer.Compose(c with { PlanScale = scale })).ToList();
        if (chosen.Contains(All[0]))
        {
            // Sheet 1 lists the pages of the others.
            var list = SheetList.Of(All, [.. made.SelectMany(m => m.Pages)]);
            made.Insert(0, SheetComposer.Compose(first with { PlanScale = scale, Tables = [.. first.Tables, list] }));
        }

        return new DrawnSet([.. made.SelectMany(m => m.Pages)], [.. made.Select(m => m.Reason).OfType<NotDrawn>()]);
    }

    /// <summary>The sheets alone, for those who do not tell people what is missing.</summary>
    public static IReadOnlyList<SheetScene> Draw(SheetRequest request, IReadOnlyCollection<int>? numbers = null) =>
        Make(request, numbers).Sheets;
}
