using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>What a reader stumbled over when every page of the templates was looked at.</summary>
public sealed class LookedAtTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory, MemberData(nameof(Templates))]
    public void Every_row_of_a_key_has_a_mark_to_look_for(string template)
        => Assert.DoesNotContain(
            DrawnPlans.Template(template).Where(p => p.Sheet < 10).Texts(), t => t is { Text: "-", Layer: Layers.Schedule });

    /// <summary>No template says how often its air is changed.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void A_column_without_a_word_in_it_is_left_out(string template)
        => Assert.DoesNotContain(DrawnPlans.Template(template).OfSheet(5).Texts(), t => t.Text == "Changes");

    /// <summary>Loads, light and air stand in the tables of sheet 5 anyway.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void What_a_table_of_the_sheet_says_is_not_listed_again(string template)
        => Assert.DoesNotContain(DrawnPlans.Template(template).OfSheet(5).Texts(), t => t.Text == "Not shown at its place");

    /// <summary>Three lines of one word each are read slowly.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void A_head_of_a_table_has_two_lines_at_most(string template)
    {
        foreach (var column in Columns(template))
        {
            int lines = 1;
            foreach (var (above, below) in column.Zip(column.Skip(1)))
            {
                lines = above.Bold && below.Bold && IsNextLine(above, below) ? lines + 1 : 1;
                Assert.True(lines <= 2, $"{above.Text} / {below.Text}");
            }
        }
    }

    /// <summary>30 480 kg is one number.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void No_number_is_broken_at_the_space_of_its_thousands(string template)
    {
        var breaks = Columns(template).SelectMany(c => c.Zip(c.Skip(1))).Where(l => IsNextLine(l.First, l.Second));
        Assert.DoesNotContain(
            breaks, l => Regex.IsMatch(l.First.Text, @"[a-z,] \d{1,3}$") && Regex.IsMatch(l.Second.Text, @"^\d{3}( |$)"));
    }

    /// <summary>The texts of tables that begin at one place across a page, top down.</summary>
    private static IEnumerable<IReadOnlyList<TextItem>> Columns(string template) => DrawnPlans.Template(template)
        .SelectMany(p => p.Items.OfType<TextItem>().Where(t => t.Layer == Layers.Schedule).GroupBy(t => t.At.X))
        .Select(c => (IReadOnlyList<TextItem>)[.. c.OrderBy(t => t.At.Y)]);

    /// <summary>The rating of a container is no figure for a trailer.</summary>
    [Fact]
    public void Sheet_9_of_a_trailer_prints_what_a_trailer_is_held_against()
    {
        string said = Words("game-trailer", 9);
        Assert.DoesNotContain("ISO 668", said, StringComparison.Ordinal);
        Assert.Contains("gross weight on the plate", said, StringComparison.Ordinal);
    }

    /// <summary>One inch is 25.4 mm by definition (international yard and pound agreement, 1959): 28 in are 711.2 mm.</summary>
    [Fact]
    public void A_figure_that_was_published_in_inches_is_printed_in_inches_too()
        => Assert.Contains(
            "711.2 mm, which is 28 in", Words(DrawnPlans.Draw(DrawnPlans.Text("goat-dairy-shed").Replace(
                "units metric", "units metric\n  code us", StringComparison.Ordinal)), 9), StringComparison.Ordinal);

    [Fact]
    public void A_set_in_feet_gives_the_upstand_of_roof_holes_in_inches()
    {
        Assert.Contains("at least 4 in all round", Words("poultry-40ft", 6), StringComparison.Ordinal);
        Assert.DoesNotContain("100 mm", Words("poultry-40ft", 6), StringComparison.Ordinal);
    }

    /// <summary>Partitions of this shed are thick enough for hatching at 1:50.</summary>
    [Fact]
    public void A_partition_looks_the_same_from_inside_as_on_the_plan()
    {
        var set = DrawnPlans.Template("goat-dairy-shed");
        foreach (string group in (string[])["wall:partitions", "partition"])
        {
            Assert.Contains(set.Items<LineItem>(), l => l.Layer == Layers.WallHatch && l.Group == group);
            Assert.DoesNotContain(set.Items<AreaItem>(), a => a.Group == group);
        }
    }

    private static string Words(string template, int sheet) => Words(DrawnPlans.Template(template), sheet);

    private static string Words(IEnumerable<SheetScene> set, int sheet) => string.Join(' ', set.OfSheet(sheet).Texts().Select(t => t.Text));

    /// <summary>A page is named once: 9 to 9.3, not 9, 9.2 to 9.3.</summary>
    [Fact]
    public void The_list_of_sheets_names_each_page_once()
    {
        var texts = DrawnPlans.Template("poultry-40ft").OfSheet(1).Texts().Select(t => t.Text).ToList();
        Assert.Contains("9 to 9.3", texts);
        Assert.DoesNotContain(texts, t => t.Contains(", 9.2 to", StringComparison.Ordinal));
    }

    /// <summary>Both hoses of this unit reach all of their rooms: no arc is drawn.</summary>
    [Fact]
    public void The_legend_has_no_hose_reach_where_none_is_drawn()
    {
        var sheet = DrawnPlans.Template("poultry-40ft").OfSheet(4);
        Assert.DoesNotContain(sheet.Items<PolylineItem>(), i => i.Group?.StartsWith("hose-reach:", StringComparison.Ordinal) == true);
        Assert.DoesNotContain(sheet.Texts(), t => t.Text.StartsWith("hose reach", StringComparison.Ordinal));
    }

    private static bool IsNextLine(TextItem above, TextItem below)
        => below.At.Y - above.At.Y < above.CapHeight * TextMeasure.LinePitch * 1.05;

    [Theory]
    [InlineData(4, "The plan names no water point")]
    [InlineData(5, "The plan names no power panel")]
    public void A_sheet_with_nothing_of_its_trade_says_so(int sheet, string words)
    {
        string said = string.Join(' ', DrawnPlans.Template("empty-start").OfSheet(sheet).Texts().Select(t => t.Text));
        Assert.Contains(words, said, StringComparison.Ordinal);
        Assert.DoesNotContain("X east and Y north", said, StringComparison.Ordinal);
    }
}
