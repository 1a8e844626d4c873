using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>
/// Whole blocks in the one column that stands beside the views of a page, as wide as the paper that they leave: the legend of a plan
/// stands beside it, and tables, which need more width, stand in the columns under it.
/// </summary>
internal sealed class SideText
{
    private readonly List<PlacedRow> rows = [];
    private readonly HashSet<int> taken = [];
    private readonly HashSet<int> pages = [];

    /// <param name="columns">Of each page with views; null where none stands beside them.</param>
    /// <param name="blocksOf">The blocks of the sheet for a width, always in the same order.</param>
    /// <param name="air">Paper between two rows, mm.</param>
    public SideText(IReadOnlyList<PaperBox?> columns, Func<double, IReadOnlyList<ColumnBlock>> blocksOf, double air)
    {
        Columns = columns;
        for (int page = 0; page < columns.Count; page++)
        {
            if (columns[page] is { } column)
            {
                Fill(page, column, blocksOf(column.Width), air);
            }
        }
    }

    /// <summary>Of each page with views.</summary>
    public IReadOnlyList<PaperBox?> Columns { get; }

    public IReadOnlyList<PlacedRow> Rows => rows;

    /// <summary>Which blocks stand here, from 0.</summary>
    public IReadOnlySet<int> Taken => taken;

    /// <summary>How many pages there are up to the last that has text here.</summary>
    public int AfterLast { get; private set; }

    /// <summary>Which pages have such a column with text in it, from 0.</summary>
    public IReadOnlySet<int> Pages => pages;

    private void Fill(int page, PaperBox column, IReadOnlyList<ColumnBlock> blocks, double air)
    {
        double down = 0;
        for (int i = 0; i < blocks.Count; i++)
        {
            var block = blocks[i];
            double height = block.HeadHeight + block.RowHeight + (air * (block.Rows.Count + (block.Head is null ? 0 : 1)));
            if (taken.Contains(i) || block.IsTight || block.Broken > 0 || down + height > column.Height)
            {
                continue;
            }

            Put(block.Title);
            if (block.Head is { } head)
            {
                Put(head);
            }

            foreach (var row in block.Rows)
            {
                Put(row);
            }

            down += TextFlow.BlockGap;
            taken.Add(i);
            pages.Add(page);
            AfterLast = page + 1;
        }

        void Put(BlockRow row)
        {
            rows.Add(new PlacedRow(page, new PaperPoint(column.Left, column.Top + down), column.Width, row));
            down += row.Height + air;
        }
    }
}
