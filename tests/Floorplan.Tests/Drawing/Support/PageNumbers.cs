using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>What is wrong with the numbers of a set's pages, as their title blocks say them; a sentence each.</summary>
internal static class PageNumbers
{
    /// <summary>Sheets from 1 to 9, the pages of each from 1 to its last, and each page says so in its title block.</summary>
    public static IEnumerable<string> Wrong(IReadOnlyList<SheetScene> pages)
    {
        if (!pages.Select(p => p.Sheet).Distinct().SequenceEqual(SheetSet.All.Select(s => s.Number)))
        {
            yield return "the sheets are " + string.Join(", ", pages.Select(p => p.Sheet).Distinct());
        }

        foreach (var sheet in pages.GroupBy(p => p.Sheet))
        {
            int count = sheet.Count();
            foreach (var (i, page) in sheet.Index())
            {
                string number = i == 0 ? $"{sheet.Key}" : $"{sheet.Key}.{i + 1}";
                string said = count == 1 ? number : $"{number}, {i + 1} of {count}";
                if ((page.Page, page.Pages) != (i + 1, count)
                    || !page.Items.OfType<TextItem>().Any(t => t.Text == $"{said}; set of {SheetSet.All.Count}"))
                {
                    yield return $"{page.Name} is page {i + 1} of {count} and does not say so";
                }
            }
        }
    }
}
