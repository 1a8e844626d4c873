using Floorplan.Drawing.Conventions;
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
        => Assert.DoesNotContain(DrawnPlans.Template(template).Texts(), t => t is { Text: "-", Layer: Layers.Schedule });

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
