using Floorplan.Drawing.Conventions;

namespace Floorplan.Drawing.Blocks;

/// <summary>A block as it stands in columns of one width: under its title, and under that again in each further column.</summary>
internal sealed class ColumnBlock(TextBlock block, double width, DrawingStandard standard)
{
    private readonly double[] heights = Sums(block.Rows);
    private BlockRow? again;

    public BlockRow Title { get; } = BlockTitle.Of(block.Title, width, standard);

    /// <summary>The title where the block goes on.</summary>
    public BlockRow Again => again ??= BlockTitle.Of($"{block.Title} (continued)", width, standard);

    /// <summary>The head of a table, under each title.</summary>
    public BlockRow? Head => block.Head;

    public IReadOnlyList<BlockRow> Rows => block.Rows;

    /// <inheritdoc cref="TextBlock.IsTight"/>
    public bool IsTight => block.IsTight;

    /// <inheritdoc cref="TextBlock.Broken"/>
    public int Broken => block.Broken;

    public double HeadHeight => Title.Height + (Head?.Height ?? 0);

    /// <summary>Of all rows, in paper mm, without title, head and air.</summary>
    public double RowHeight => heights[^1];

    /// <summary>Of so many rows from one on, as many as there are, in paper mm, without air.</summary>
    public double HeightOf(int row, int rows) => heights[Math.Min(row + rows, Rows.Count)] - heights[row];

    /// <summary>The height above each row, and of all.</summary>
    private static double[] Sums(IReadOnlyList<BlockRow> rows)
    {
        double[] sums = new double[rows.Count + 1];
        for (int i = 0; i < rows.Count; i++)
        {
            sums[i + 1] = sums[i] + rows[i].Height;
        }

        return sums;
    }
}
