using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>A row of text and where it stands.</summary>
/// <param name="Page">From 0.</param>
internal readonly record struct PlacedRow(int Page, PaperPoint At, double Width, BlockRow Row);

/// <param name="Pages">How many pages have text or come before text.</param>
/// <param name="Complete">False when more pages than allowed would be needed.</param>
internal sealed record FlowedText(IReadOnlyList<PlacedRow> Rows, int Pages, bool Complete);

/// <summary>
/// Fills columns with blocks, page after page. A block breaks between rows only, and goes on under its title and head again. Nothing is
/// ever drawn outside a column.
/// </summary>
internal sealed class TextFlow
{
    /// <summary>Between two blocks, mm.</summary>
    public const double BlockGap = 4;

    /// <summary>A block leaves no fewer rows at the foot or the head of a column, where it has as many; own choice.</summary>
    private const int FewestRows = 2;

    private readonly Func<int, IReadOnlyList<PaperBox>> columnsOf;
    private readonly double air;
    private readonly int mostPages;
    private readonly double tallestAfter;
    private readonly List<PlacedRow> rows;
    private IReadOnlyList<PaperBox> columns;
    private int page;
    private int column;
    private double down;

    private TextFlow(Func<int, IReadOnlyList<PaperBox>> columnsOf, double air, int mostPages, List<PlacedRow> rows)
    {
        (this.columnsOf, this.air, this.mostPages, this.rows) = (columnsOf, air, mostPages, rows);
        columns = columnsOf(0);
        tallestAfter = columnsOf(int.MaxValue).Max(c => c.Height);
    }

    /// <param name="columnsOf">The columns of each page, from 0; pages after those with views are all alike.</param>
    /// <param name="air">Paper between two rows, mm.</param>
    /// <param name="whole">Keeps blocks whole where a later column holds them whole.</param>
    /// <param name="rows">Takes the rows in place of what it held: a list that is large already saves time.</param>
    public static FlowedText Of(
        IEnumerable<ColumnBlock> blocks, Func<int, IReadOnlyList<PaperBox>> columnsOf, bool whole, double air, int mostPages,
        List<PlacedRow> rows)
    {
        rows.Clear();
        var flow = new TextFlow(columnsOf, air, mostPages, rows);
        bool complete = blocks.All(b => flow.Fill(b, whole));
        return new FlowedText(rows, rows.Count == 0 ? 0 : rows[^1].Page + 1, complete);
    }

    private double Room => column < columns.Count ? columns[column].Height - down : 0;

    private bool Fill(ColumnBlock block, bool whole)
    {
        double head = block.HeadHeight + (air * (block.Head is null ? 1 : 2));
        double height = head + block.RowHeight + (block.Rows.Count * air);
        if (down > 0 && Room < (whole && height <= TallestColumn() ? height : head + Together(block, 0)) && !Next())
        {
            return false;
        }

        bool titled = false;
        for (int i = 0; i < block.Rows.Count; i++)
        {
            while (Room < (titled ? Lasting(block, i) : head + Together(block, i)))
            {
                // A row that no whole column holds would go on for ever.
                if (down == 0 && page >= mostPages || !Next())
                {
                    return false;
                }

                titled = false;
            }

            if (!titled)
            {
                Put(i == 0 ? block.Title : block.Again);
                if (block.Head is { } heads)
                {
                    Put(heads);
                }

                titled = true;
            }

            Put(block.Rows[i]);
        }

        down += BlockGap;
        return true;
    }

    /// <summary>The paper that a column must have, under a title and a head, for the block to begin or go on in it with this row.</summary>
    private double Together(ColumnBlock block, int row)
    {
        int left = block.Rows.Count - row;
        double together = Tall(block, row, left < 2 * FewestRows ? left : FewestRows);
        double most = tallestAfter - block.HeadHeight - (2 * air);
        return together <= most ? together : Tall(block, row, 1);
    }

    /// <summary>The same for a row below others: the last rows stay together, so that none goes on alone.</summary>
    private double Lasting(ColumnBlock block, int row)
        => Tall(block, row, block.Rows.Count - row == FewestRows && row >= FewestRows ? FewestRows : 1);

    private double Tall(ColumnBlock block, int row, int rows)
        => block.HeightOf(row, rows) + ((Math.Min(rows, block.Rows.Count - row) - 1) * air);

    /// <summary>Of this page and of pages without views, which come at last.</summary>
    private double TallestColumn()
    {
        double tallest = tallestAfter;
        for (int i = column + 1; i < columns.Count; i++)
        {
            tallest = Math.Max(tallest, columns[i].Height);
        }

        return tallest;
    }

    private void Put(BlockRow row)
    {
        var box = columns[column];
        rows.Add(new PlacedRow(page, new PaperPoint(box.Left, box.Top + down), box.Width, row));
        down += row.Height + air;
    }

    private bool Next()
    {
        down = 0;
        column++;
        while (column >= columns.Count)
        {
            if (++page >= mostPages)
            {
                return false;
            }

            columns = columnsOf(page);
            column = 0;
        }

        return true;
    }
}
