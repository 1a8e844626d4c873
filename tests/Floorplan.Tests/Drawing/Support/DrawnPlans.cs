using System.Collections.Concurrent;
using Floorplan.Arrange.CuttingStock;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Model;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Frames;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>Sheets drawn from the shipped templates and from plans as text.</summary>
internal static class DrawnPlans
{
    public static readonly string[] Templates =
        ["empty-start", "fish-20ft", "game-trailer", "goat-dairy-shed", "poultry-40ft", "vegetable-l-shed"];

    private static readonly ConcurrentDictionary<string, IReadOnlyList<SheetScene>> Drawn = new();

    public static IReadOnlyList<SheetScene> Template(string name) => Drawn.GetOrAdd(name, n => Draw(Text(n)));

    /// <summary>The set of any plan of <see cref="AllPlans"/>.</summary>
    public static IReadOnlyList<SheetScene> Set(string plan) => Drawn.GetOrAdd(plan, p => Draw(AllPlans.Text(p)));

    public static string Text(string name) => File.ReadAllText(Repository.At("templates", name + ".unit"));

    public static IReadOnlyList<SheetScene> Draw(string text, IReadOnlyCollection<int>? numbers = null)
        => SheetSet.Draw(Request(text), numbers);

    /// <param name="text">A plan without mistakes in its text.</param>
    public static SheetRequest Request(string text) => Request(CheckedPlan.Plan(text));

    public static SheetRequest Request(Plan plan)
    {
        var facts = new PlanFacts(plan, new FloorSpace(plan));
        return new SheetRequest(facts, Checker.Check(facts))
        {
            Stock = StockCutter.Cut(
                CutList.Of(CutOuts.Of(plan), plan.Units), StockPlan.UsualBar(plan.Units), StockPlan.UsualKerf(plan.Units)),
        };
    }

    /// <summary>All pages of one sheet of a set.</summary>
    public static IReadOnlyList<SheetScene> OfSheet(this IEnumerable<SheetScene> set, int sheet) => [.. set.Where(p => p.Sheet == sheet)];

    /// <summary>What is drawn on these pages, page after page.</summary>
    public static IEnumerable<T> Items<T>(this IEnumerable<SheetScene> pages)
        where T : SceneItem
        => pages.SelectMany(p => p.Items).OfType<T>();

    public static IEnumerable<TextItem> Texts(this IEnumerable<SheetScene> pages) => pages.Items<TextItem>();

    /// <summary>The page whose view shows this group: places are only compared on one page.</summary>
    public static SheetScene PageWith(this IEnumerable<SheetScene> pages, string group)
        => pages.First(p => p.Items.Any(i => i.Group == group));
}
