using System.Collections.Concurrent;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets.Elevations;
using Floorplan.Drawing.Sheets.FlowAndHygiene;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Drawing.Sheets.Inspection;
using Floorplan.Drawing.Sheets.Keeping;
using Floorplan.Drawing.Sheets.OpeningsAndFrames;
using Floorplan.Drawing.Sheets.PowerLightAir;
using Floorplan.Drawing.Sheets.Schedules;
using Floorplan.Drawing.Sheets.Stations;
using Floorplan.Drawing.Sheets.TheDay;
using Floorplan.Drawing.Sheets.WaterAndDrainage;

namespace Floorplan.Drawing.Sheets;

/// <summary>All sheets, and the drawing of them.</summary>
public static class SheetSet
{
    public static IReadOnlyList<Sheet> All { get; } =
        [
            new GeneralArrangementSheet(), new FlowAndHygieneSheet(), new StationsSheet(), new WaterAndDrainageSheet(),
            new PowerLightAirSheet(), new OpeningsAndFramesSheet(), new ElevationsSheet(), new SchedulesSheet(), new ChecksSheet(),
            new TheDaySheet()];

    /// <summary>Draws sheets in order of number. A plan with findings is drawn with them marked.</summary>
    /// <param name="numbers">Which sheets; null draws all. Numbers without a sheet are passed over.</param>
    /// <param name="kept">The sheets as they were drawn before an edit; null lays every sheet out.</param>
    public static DrawnSet Make(SheetRequest request, IReadOnlyCollection<int>? numbers = null, KeptSheets? kept = null)
    {
        var contents = Contents(request, numbers);

        // Some take five times as long as others, so a processor that is free takes the next one.
        var next = Partitioner.Create(contents.Where(c => c.TitleBlock.Sheet > 1).ToList(), EnumerablePartitionerOptions.NoBuffering);
        var made = next.AsParallel().AsOrdered().Select(Compose).ToList();
        if (contents.FirstOrDefault(c => c.TitleBlock.Sheet == 1) is { } first)
        {
            // Sheet 1 lists the pages of the others.
            var list = SheetList.Of(All, [.. made.SelectMany(m => m.Pages)]);
            made.Insert(0, Compose(first with { Tables = [.. first.Tables, list] }));
        }

        return new DrawnSet([.. made.SelectMany(m => m.Pages)], [.. made.Select(m => m.Reason).OfType<NotDrawn>()]);

        (IReadOnlyList<SheetScene> Pages, NotDrawn? Reason) Compose(SheetContent content)
            => kept is null ? SheetComposer.Compose(content) : kept.Compose(content);
    }

    /// <summary>What each sheet shows, before it is laid out, but for the list of pages on sheet 1.</summary>
    internal static IReadOnlyList<SheetContent> Contents(SheetRequest request, IReadOnlyCollection<int>? numbers = null)
    {
        (double scale, request) = SetScale.Of(request, Head(request, All[0]));

        // The floor's space is for one thread, so contents are gathered one after another; the drawing of each needs no other.
        return
        [
            .. All.Where(s => numbers is null || numbers.Contains(s.Number))
                .Select(s => s.Content(request, Head(request, s)) with { PlanScale = scale }),
        ];
    }

    private static SheetContent Head(SheetRequest request, Sheet sheet) => SheetHead.For(request, sheet, All.Count);

    /// <summary>The sheets alone, for those who do not tell people what is missing.</summary>
    public static IReadOnlyList<SheetScene> Draw(SheetRequest request, IReadOnlyCollection<int>? numbers = null) =>
        Make(request, numbers).Sheets;
}
