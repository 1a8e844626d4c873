using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>A set is printed on one paper that people own, and read without a lens.</summary>
public sealed class OnePaperTests
{
    /// <summary>ISO 3098-1: the heights of lettering are 1.8, 2.5, 3.5, 5 mm and so on.</summary>
    private const double Smallest = 2.5;

    /// <summary>For marks in a tag, and for the names of the title block's fields.</summary>
    private const double SmallestTag = 2;

    /// <summary>As <c>hz1</c>, <c>circuit 3</c> or <c>WW 3 15/16"</c>; what is longer is not a tag. A tag may have several.</summary>
    private const int LongestTag = 11;

    public static TheoryData<string> Plans => [.. AllPlans.All];

    /// <summary>ISO 216, and ASME Y14.1 size B, lying.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void All_pages_of_a_set_are_of_the_usual_paper(string plan)
    {
        var request = DrawnPlans.Request(AllPlans.Text(plan));
        var (width, height) = request.Plan.Units == UnitSystem.Metric ? (420, 297) : (17 * 25.4, 11 * 25.4);
        Assert.Equal([(width, height)], DrawnPlans.Set(plan).Select(p => (p.WidthMm, p.HeightMm)).Distinct());
    }

    [Theory, MemberData(nameof(Plans))]
    public void No_text_is_smaller_than_can_be_read(string plan)
    {
        var small = DrawnPlans.Set(plan).SelectMany(p => p.Items.OfType<TextItem>().Where(IsTooSmall).Select(t => Say(p, t))).ToList();
        Assert.True(small.Count == 0, string.Join('\n', small));
    }

    private static bool IsTooSmall(TextItem text) => text.CapHeight < SmallestTag - 1e-9
        || (text.CapHeight < Smallest - 1e-9 && text.Layer != Layers.TitleBlock && text.Text.Split(", ").Any(t => t.Length > LongestTag));

    private static string Say(SheetScene page, TextItem text) => $"{page.Name}: {text.CapHeight:0.0} mm: \"{text.Text}\" of {text.Group}";
}
