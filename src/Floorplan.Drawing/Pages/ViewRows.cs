using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Pages;

/// <summary>Puts the views of a sheet in rows, top down, and on as many pages as they take.</summary>
internal static class ViewRows
{
    /// <summary>The views of each page, or null where one does not fit a page.</summary>
    /// <param name="views">Those too large for the page in parts.</param>
    /// <param name="centred">Rows in the middle of the page; else at its left.</param>
    /// <param name="mostRows">No page gets more rows of views.</param>
    /// <returns>The views, and how many rows of them the fullest page has.</returns>
    public static (IReadOnlyList<IReadOnlyList<PlacedView>> Views, int MostRows)? Pack(
        IReadOnlyList<ISheetView> views, double denominator, PageSpace space, UnitSystem units, bool centred, int mostRows)
    {
        var left = new List<Placeable>(views.Select(v => new Placeable(v, v.Measure(denominator))));
        if (left.Count > 1)
        {
            // Wide views first, so that the space beside narrower ones is one.
            left = [.. left.OrderByDescending(p => Math.Round(p.Size.Width))];
        }

        var pages = new List<IReadOnlyList<PlacedView>>();
        int fullest = 0;
        while (left.Count > 0)
        {
            var page = new List<PlacedView>();
            double top = space.Inside.Top + PageSpace.Pad;
            int rows = 0;
            while (rows < mostRows && Row(left, page.Count == 0) is { Count: > 0 } row && Fits(row, top, space, centred))
            {
                Place(row, top, page);
                left.RemoveAll(p => row.Exists(r => ReferenceEquals(r.View, p.View)));
                top += row.Max(r => r.Size.Height) + ViewStrip.Height;
                rows++;
            }

            if (page.Count == 0)
            {
                return null;
            }

            fullest = Math.Max(fullest, rows);
            pages.Add(page);
        }

        return (pages, fullest);

        // The first view and what fits beside it, in the order of width.
        List<Placeable> Row(List<Placeable> from, bool firstOfPage)
        {
            var row = new List<Placeable>();
            foreach (var one in from)
            {
                // A page too narrow for title and bar side by side goes without the bar; the title says the scale.
                bool hasBar = one.View.HasScale && firstOfPage && row.Count == 0
                    && ViewStrip.Width(one.View, denominator, units, true) <= space.Width;
                var cell = one with { HasBar = hasBar, Strip = ViewStrip.Width(one.View, denominator, units, hasBar) };
                if (row.Count == 0
                    || Width(row) + PageSpace.Pad + cell.Width <= space.Width && cell.Size.Height <= row[0].Size.Height + 1)
                {
                    row.Add(cell);
                }
            }

            return row;
        }

        void Place(List<Placeable> row, double top, List<PlacedView> page)
        {
            double at = Left(row, space, centred);
            double bottom = top + row.Max(r => r.Size.Height);
            foreach (var cell in row)
            {
                page.Add(
                    new PlacedView(
                        cell.View, PaperBox.At(new(at, top), cell.Size.Width, cell.Size.Height),
                        PaperBox.At(new(at, bottom), cell.Strip, ViewStrip.Height), cell.HasBar));
                at += cell.Width + PageSpace.Pad;
            }
        }
    }

    private static double Left(List<Placeable> row, PageSpace space, bool centred) =>
        centred ? space.Inside.Left + ((space.Inside.Width - Width(row)) / 2) : space.Inside.Left + PageSpace.Pad;

    private static double Width(List<Placeable> row) => row.Sum(c => c.Width) + (PageSpace.Pad * (row.Count - 1));

    /// <summary>Neither a view nor the strip under it meets the title block or the edge of the page.</summary>
    private static bool Fits(List<Placeable> row, double top, PageSpace space, bool centred)
    {
        double before = Left(row, space, centred) + Width(row) - row[^1].Width;
        double bottom = top + row.Max(r => r.Size.Height);
        return Width(row) <= space.Width
            && bottom <= space.Lowest(before + row[^1].Size.Width)
            && bottom + ViewStrip.Height <= space.Lowest(before + row[^1].Strip);
    }

    /// <param name="Strip">The width of the strip under it.</param>
    private sealed record Placeable(ISheetView View, PaperSpace Size, double Strip = 0, bool HasBar = false)
    {
        public double Width => Math.Max(Size.Width, Strip);
    }
}
