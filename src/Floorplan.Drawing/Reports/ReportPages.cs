using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Reports;

/// <summary>
/// A report on upright A4 or letter paper: chapters begin on a page, tables go on under a repeated head, every page has its number. A
/// picture wider than the paper has a page of its own size.
/// </summary>
public static class ReportPages
{
    private const double Margin = 15;
    private const double Foot = 10;
    private const double Gap = 2;

    public static IReadOnlyList<SheetScene> Of(ReportDocument report, UnitSystem units)
    {
        var paper = PaperSize.For(units)[0];
        (double width, double height) = (Math.Min(paper.Width, paper.Height), Math.Max(paper.Width, paper.Height));
        var standard = DrawingStandard.For(units);
        var pages = new List<ReportPage>();
        foreach (var chapter in report.Chapters)
        {
            Flow(report, chapter, pages, new Paper(width, height, standard));
        }

        return [.. pages.Select((p, i) => p.Finish(i + 1, pages.Count, report.Title))];
    }

    private static void Flow(ReportDocument report, ReportChapter chapter, List<ReportPage> pages, Paper paper)
    {
        bool first = pages.Count == 0;
        var page = Begin(chapter.Title);
        foreach (var row in ReportRows.Title(report, chapter, first, paper.Inner, paper.Standard))
        {
            page.Add(row);
        }

        foreach (var block in chapter.Blocks)
        {
            if (block is ReportPicture picture)
            {
                pages.Add(ReportPage.Of(picture.Scene, chapter.Title, paper.Standard));
                continue;
            }

            if (pages[^1] != page)
            {
                page = Begin(chapter.Title);
            }

            var rows = ReportRows.Of(block, report.Source, paper.Inner, paper.Standard);
            for (int i = 0; i < rows.Rows.Count; i++)
            {
                // A title or head does not stand alone at the end of a page.
                double with = rows.Rows[i].Height + (i == 0 && rows.Rows.Count > 1 ? rows.Rows[1].Height : 0);
                if (!page.Fits(with))
                {
                    page = Begin(chapter.Title);
                    if (i > rows.HeadAfter && rows.Head is { } head)
                    {
                        page.Add(head);
                    }
                }

                page.Add(rows.Rows[i]);
            }

            page.Skip(Gap);
        }

        ReportPage Begin(string title)
        {
            var begun = new ReportPage(title, paper.Width, paper.Height, Margin, Foot, paper.Standard);
            pages.Add(begun);
            return begun;
        }
    }

    private sealed record Paper(double Width, double Height, DrawingStandard Standard)
    {
        public double Inner => Width - (2 * Margin);
    }
}
