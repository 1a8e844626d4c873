using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Blocks;

/// <summary>Fills the text space column by column. Nothing is ever drawn outside a column; what finds no room is counted.</summary>
internal sealed class TextColumns(IReadOnlyList<PaperBox> columns, DrawingStandard standard)
{
    public const double Gap = 8;

    private const double BlockGap = 4;
    private const double TitleGap = 2;

    private int column;
    private double down;

    /// <summary>Kept free at the end of the last column.</summary>
    private double foot;

    private double TitleHeight => standard.SubtitleHeight + TitleGap + 1;

    /// <summary>Columns of equal width over a drawing space, above the title block and outside the view.</summary>
    public static IReadOnlyList<PaperBox> Around(PaperBox inside, PaperBox view)
    {
        // Clear of the centring marks, which reach 5 mm into the drawing space.
        const double pad = 6;
        const double wanted = 100;
        int count = Math.Max(2, (int)((inside.Width - (2 * pad) + Gap) / (wanted + Gap)));
        double width = (inside.Width - (2 * pad) - ((count - 1) * Gap)) / count;
        var all = new List<PaperBox>();
        for (int i = 0; i < count; i++)
        {
            double left = inside.Left + pad + (i * (width + Gap));
            bool underView = left < view.Right + Gap && view.Left - Gap < left + width;
            bool overTitle = left + width > inside.Right - TitleBlock.Width - Gap;
            all.Add(new PaperBox(left, (underView ? view.Bottom : inside.Top) + pad, left
                + width, inside.Bottom - (overTitle ? TitleBlock.Height : 0) - pad));
        }

        return all;
    }

    /// <summary>
    /// Draws the blocks in order, or only measures when there is no scene; true when everything fits. Blocks stay whole when all
    /// fits so; else they go on in the next column. When even then not all fits, lists come last and end with how much more there is.
    /// </summary>
    public bool Fill(IEnumerable<TextBlock> blocks, SceneBuilder? scene)
    {
        IReadOnlyList<TextBlock> all = [.. blocks];
        bool whole = Fill(all, null, whole: true) == 0;
        bool fits = whole || Fill(all, null, whole: false) == 0;
        if (scene is null || fits)
        {
            return fits && (scene is null || Fill(all, scene, whole) == 0);
        }

        foot = TextBlocks.Height(1, standard);
        int left = Fill([.. all.Where(b => !b.IsList), .. all.Where(b => b.IsList)], scene, whole: false);
        var last = columns[^1];
        scene.Text(
            new TextItem(
                $"… and {left} more lines that find no room here", new(last.Left, last.Bottom), standard.NoteHeight, TextAnchor.Start,
                Layers.Legend, Bold: true));
        return false;
    }

    /// <returns>Rows that found no room.</returns>
    private int Fill(IReadOnlyList<TextBlock> blocks, SceneBuilder? scene, bool whole)
    {
        column = 0;
        down = 0;
        return blocks.Sum(b => Fill(b, scene, whole));
    }

    private int Fill(TextBlock block, SceneBuilder? scene, bool whole)
    {
        bool titled = false;
        double height = TitleHeight + (block.Head?.Height ?? 0) + block.Rows.Sum(r => r.Height);
        if (whole && columns.Skip(column + 1).Any(c => height <= c.Height))
        {
            while (down + height > columns[column].Height)
            {
                column++;
                down = 0;
            }
        }

        for (int i = 0; i < block.Rows.Count; i++)
        {
            double head = titled ? 0 : TitleHeight + (block.Head?.Height ?? 0);
            bool last = i == block.Rows.Count - 1;
            while (column < columns.Count && down + head + block.Rows[i].Height > HeightOf(column))
            {
                column++;
                down = 0;
                titled = false;
                head = TitleHeight + (block.Head?.Height ?? 0);
            }

            if (column >= columns.Count)
            {
                return block.Rows.Count - i;
            }

            if (!titled)
            {
                Title(block, i > 0, scene);
                titled = true;
            }

            if (scene is not null)
            {
                block.Rows[i].Draw(scene, Here);
            }

            down += block.Rows[i].Height + (last ? BlockGap : 0);
        }

        return 0;
    }

    private double HeightOf(int at) => columns[at].Height - (at == columns.Count - 1 ? foot : 0);

    private PaperPoint Here => new(columns[column].Left, columns[column].Top + down);

    private void Title(TextBlock block, bool again, SceneBuilder? scene)
    {
        if (scene is not null)
        {
            string whole = block.Title + (again ? " (continued)" : "");
            double height = TextMeasure.Width(whole, standard.SubtitleHeight, true) <= columns[column].Width
                ? standard.SubtitleHeight
                : standard.NoteHeight;
            string title = SafeText.Fit(whole, columns[column].Width, height, true);
            scene.Text(
                new TextItem(title, Here
                    + new PaperPoint(0, standard.SubtitleHeight), height, TextAnchor.Start, Layers.Legend, Bold: true));
            double y = Here.Y + standard.SubtitleHeight + 1.3;
            scene.Line(
                new(columns[column].Left, y), new(columns[column].Right, y), new Pen(standard.Narrow), Layers.Legend, null,
                Band.Annotation);
        }

        down += TitleHeight;
        if (block.Head is { } head)
        {
            if (scene is not null)
            {
                head.Draw(scene, Here);
            }

            down += head.Height;
        }
    }
}
