using Floorplan.Benchmarks;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Live;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Svg;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Live;

/// <summary>A plan that is edited gives what a fresh run gives, to the byte, and takes over what an edit does not touch.</summary>
public class LivePlanTests
{
    private const string Path = "live.unit";

    /// <summary>10,000 edits take minutes, so they are made where the suite runs whole; else 150, a few of every plan.</summary>
    private static readonly int Runs = Thoroughness.Whole ? 200 : 30;
    private static readonly int EditsOfOneRun = Thoroughness.Whole ? 50 : 5;

    /// <summary>A sheet takes as long as its findings, so it is compared after two edits of so many.</summary>
    private static readonly int SheetEvery = Thoroughness.Whole ? 20 : 5;

    [Fact]
    public void After_any_edit_it_gives_what_a_fresh_run_gives()
    {
        string[] plans =
        [
            .. DrawnPlans.Templates.Select(DrawnPlans.Text),
            PlanGenerator.Make(6), PlanGenerator.Make(14), InventedPlans.Make(3), InventedPlans.Make(21), InventedPlans.Make(64),
            .. RuleCatalogue.All.Where((_, i) => i % 4 == 1).Select(r => r.Bad),
        ];
        Parallel.For(0, Runs, run =>
        {
            var edits = new RandomEdits(plans[run % plans.Length], run);
            var live = new LivePlan(Path, new NoFiles());
            int sheet = 1 + (run % SheetSet.All.Count);
            live.Edit(edits.Text);
            for (int i = 0; i < EditsOfOneRun; i++)
            {
                string text = edits.Next(live.Plan is null);
                live.Edit(text);
                HoldAgainstFresh(live, text, i % SheetEvery < 2 ? sheet : null, $"edit {i} of run {run}");
            }
        });
    }

    [Theory]
    [InlineData("poultry-40ft")]
    [InlineData("game-trailer")]
    public void A_comment_keeps_the_floor_and_every_sheet(string template)
    {
        string text = DrawnPlans.Text(template);
        var live = new LivePlan(Path, new NoFiles());
        live.Edit(text);
        int sheets = SheetSet.All.Count(s => live.Sheet(s.Number).Pages.Count > 0);
        Assert.Equal((0, sheets), (live.Sheets.Kept, live.Sheets.Drawn));

        text = "# A note on top moves every place in the text.\n\n" + text;
        live.Edit(text);
        Assert.True(live.Facts!.Space.IsKept);
        foreach (var sheet in SheetSet.All)
        {
            HoldAgainstFresh(live, text, sheet.Number, sheet.Name);
        }

        Assert.Equal((sheets, sheets), (live.Sheets.Kept, live.Sheets.Drawn));
    }

    [Fact]
    public void A_letter_in_a_label_keeps_the_floor_and_the_sheets_that_do_not_show_it()
    {
        string text = PlanGenerator.Make(6);
        var live = new LivePlan(Path, new NoFiles());
        live.Edit(text);
        _ = SheetSet.All.Select(s => live.Sheet(s.Number)).ToList();
        text = text.Replace("\"Bench 0.3\"", "\"Bench 0.3x\"", StringComparison.Ordinal);
        live.Edit(text);
        Assert.True(live.Facts!.Space.IsKept);
        Assert.Equal("Bench 0.3x", live.Facts.BringingIn.Entries.Single(e => e.Station.Id == "b0-3").Station.Label);
        foreach (var sheet in SheetSet.All)
        {
            HoldAgainstFresh(live, text, sheet.Number, sheet.Name);
        }

        Assert.True(live.Sheets.Kept > 0, "no sheet was kept");
        Assert.True(live.Sheets.Drawn > SheetSet.All.Count, "no sheet was drawn again");
    }

    [Fact]
    public void Half_a_word_while_typing_loses_nothing()
    {
        string text = DrawnPlans.Text("fish-20ft");
        var live = new LivePlan(Path, new NoFiles());
        live.Edit(text);
        live.Edit(text + "\nstat");
        Assert.Null(live.Plan);
        Assert.Empty(live.Findings);
        Assert.Empty(live.Sheet(1).Pages);
        Assert.Null(live.Sheet(1).Reason);
        live.Edit(text + "\n");
        Assert.True(live.Facts!.Space.IsKept);
        HoldAgainstFresh(live, text + "\n", 1, "the mended text");
    }

    private static void HoldAgainstFresh(LivePlan live, string text, int? sheet, string what)
    {
        var bound = PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, Path)), new NoFiles());
        var facts = bound is { HasErrors: false, Plan: { } plan } ? new PlanFacts(plan, new FloorSpace(plan)) : null;
        IReadOnlyList<Finding> findings = facts is null ? [] : Checker.Check(facts);
        Same(AllThatCame.Of(bound.Diagnostics, findings, facts), AllThatCame.Of(live.Diagnostics, live.Findings, live.Facts), what, text);
        if (facts is null || sheet is not { } number)
        {
            return;
        }

        var drawn = SheetSet.Make(new SheetRequest(facts, findings), [number]);
        var (pages, reason) = live.Sheet(number);
        Same(Words(drawn.Sheets), Words(pages), $"sheet {number}, {what}", text);
        Assert.Equal(drawn.NotDrawn.FirstOrDefault()?.Message, reason?.Message);
    }

    private static string Words(IReadOnlyList<SheetScene> pages) => string.Join(
        '\n', pages.Select(p => $"{SvgWriter.Write(p)}\n{p.Name} {p.Title} {p.Denominator}\n{string.Join('\n', p.Figures)}"));

    /// <summary>Tells the first line that differs, and the text that it came of.</summary>
    private static void Same(string fresh, string live, string what, string text)
    {
        if (fresh == live)
        {
            return;
        }

        string[] a = fresh.Split('\n'), b = live.Split('\n');
        int at = Enumerable.Range(0, Math.Max(a.Length, b.Length)).First(i => a.ElementAtOrDefault(i) != b.ElementAtOrDefault(i));
        Assert.Fail($"{what}: a fresh run gives\n{a.ElementAtOrDefault(at)}\nand not\n{b.ElementAtOrDefault(at)}\n\n{text}");
    }
}
