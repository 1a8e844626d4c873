using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Pages;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>How blocks break over columns: a reader does not look for one row under a title of its own.</summary>
public sealed class TextFlowTests
{
    private const double RowHeight = 6;

    private static readonly DrawingStandard Standard = DrawingStandard.For(UnitSystem.Metric);

    public static TheoryData<int, double, double> Cases()
    {
        var cases = new TheoryData<int, double, double>();
        foreach (int rows in (int[])[2, 3, 4, 7, 20])
        {
            foreach (double first in (double[])[20, 26, 32, 38, 44])
            {
                foreach (double air in (double[])[0, 1.5, 4])
                {
                    cases.Add(rows, first, air);
                }
            }
        }

        return cases;
    }

    /// <summary>Two columns as low as those under a view, then whole pages.</summary>
    [Theory, MemberData(nameof(Cases))]
    public void No_row_of_a_block_goes_on_or_stays_behind_alone(int rows, double low, double air)
    {
        var block = Block("Frames to saw", rows);
        var flowed = TextFlow.Of(
            [Block("Legend", 2), block, Block("Notes", 3)],
            page => [PaperBox.At(new(0, 0), 100, page == 0 ? low : 200), PaperBox.At(new(110, 0), 100, page == 0 ? low : 200)],
            whole: false, air, mostPages: 9, []);

        Assert.True(flowed.Complete);
        var pieces = flowed.Rows.Where(r => block.Rows.Contains(r.Row)).GroupBy(r => (r.Page, r.At.X)).Select(g => g.Count()).ToList();
        Assert.Equal(rows, pieces.Sum());
        Assert.All(pieces, p => Assert.True(p >= 2, string.Join(", ", pieces)));
    }

    /// <summary>
    /// The tails of g, p and y in DejaVu Sans Bold and Liberation Sans Bold, measured on the fonts' outlines with Pillow: 0.296 and
    /// 0.308 of the height of the capitals.
    /// </summary>
    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Feet)]
    public void The_line_under_a_title_stands_clear_of_its_letters(UnitSystem units)
    {
        foreach (double note in (double[])[2.5, 3.5])
        {
            var standard = DrawingStandard.For(units) with { NoteHeight = note, SubtitleHeight = note * 1.4 };
            var scene = new SceneBuilder();
            BlockTitle.Of("Legend, page by page", 150, standard).Draw(scene, new(0, 0));
            var title = scene.Items.OfType<TextItem>().Single();
            Assert.True(scene.Items.OfType<LineItem>().Single().From.Y - title.At.Y > (0.31 * title.CapHeight) + (standard.Narrow / 2));
        }
    }

    /// <summary>No two rows are equal.</summary>
    private static ColumnBlock Block(string title, int rows)
        => new(
            new TextBlock(
                title,
                [.. Enumerable.Range(0, rows).Select(i => new BlockRow(RowHeight, (_, _) => { }) { Used = i + (100 * title.Length) })]),
            100, Standard);
}
