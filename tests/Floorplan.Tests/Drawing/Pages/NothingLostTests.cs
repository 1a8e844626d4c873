using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>Every row of every table, every finding, note and caution stands whole on the pages of its sheet.</summary>
public sealed class NothingLostTests
{
    public static TheoryData<string> Plans => [.. AllPlans.All];

    [Theory, MemberData(nameof(Plans))]
    public void All_that_a_sheet_says_is_read_out_of_its_pages(string plan)
    {
        var request = DrawnPlans.Request(AllPlans.Text(plan));
        var lost = LostWords.Of(request, SheetSet.Draw(request));
        Assert.True(lost.Count == 0, string.Join('\n', lost));
    }
}
