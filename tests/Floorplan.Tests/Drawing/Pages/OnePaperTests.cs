using Floorplan.Language.Quantities;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>A set is printed on one paper that people own, and read without a lens.</summary>
public sealed class OnePaperTests
{
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
        var small = DrawnPlans.Set(plan).SelectMany(SmallText.On).ToList();
        Assert.True(small.Count == 0, string.Join('\n', small));
    }

    [Theory, MemberData(nameof(Plans))]
    public void Every_page_says_which_it_is(string plan)
    {
        var wrong = PageNumbers.Wrong(DrawnPlans.Set(plan)).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}
