using System.Text.RegularExpressions;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Sheets.OpeningsAndFrames;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;
using Floorplan.Sizing.Placing;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>
/// Where an opening is along its wall: picture, rows and tables of sheet 6 count from one corner, and the place in its room is that of
/// sheet 1 and of the CSV.
/// </summary>
public class CutOutPlaceTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    /// <summary>
    /// By hand: the wall begins at 5000, and the shed's wall is 115 thick, so plan 0 is 115 in. The door is 5350 from there: 5465 - 5000 =
    /// 465 clear, less a frame of 50 is 415. The finished inside of the wall begins at 5000 - 115 = 4885: 5465 - 4885 = 580.
    /// </summary>
    [Fact]
    public void A_wall_of_an_L_begins_at_its_own_corner()
    {
        var request = DrawnPlans.Request(DrawnPlans.Text("vegetable-l-shed"));
        var cut = CutOuts.Of(request.Plan).Single(c => c.Opening.Id == "d2");
        Assert.Equal(415, cut.Along.Millimetres, 3);
        Assert.Equal(465, cut.ClearAlong.Millimetres, 3);

        var pages = SheetSet.Draw(request, [6]);
        var row = pages.Texts().Where(t => t.Group == "dimension:datum:along").Select(t => t.Text).ToList();
        Assert.Contains("415", row);
        Assert.Contains("1415", row);
        Assert.Contains("7000", row);
        Assert.DoesNotContain("5415", row);
        Assert.Contains("580", pages.Texts().Where(t => t.Group == "dimension:finished:along").Select(t => t.Text));
        string[] table = [.. TableRow(request, "d2")];
        Assert.Contains("580", table);
        Assert.Contains("300 from W", table);
    }

    [Theory, MemberData(nameof(Templates))]
    public void View_table_and_room_agree(string template)
    {
        var request = DrawnPlans.Request(DrawnPlans.Text(template));
        var (tape, pages) = (Tape.ForSteel(request.Plan.Units), SheetSet.Draw(request, [6]));
        string[] inRow =
        [
            .. pages.Texts().Where(t => t.Group == "dimension:finished:along").Select(t => Plain(t.Text)),
        ];
        foreach (var cut in CutOuts.Of(request.Plan))
        {
            string[] row = [.. TableRow(request, cut.Opening.Id).Select(Plain)];
            var finished = cut.Wall.FinishedIn(request.Plan.Shell);
            var start = cut.Wall.RunsEastWest ? cut.Opening.Start.X : cut.Opening.Start.Y;
            string along = Plain(tape.Cell(start - finished.From));
            Assert.Contains(along, row);
            Assert.Contains(along, inRow);
            var room = FromFaces.Of(cut.Opening)!.Value.Along;
            string inRoom = Plain(tape.Cell(tape.Between(room.Face, room.Edge)));
            Assert.Contains(row, c => c.StartsWith(inRoom + "from", StringComparison.Ordinal));
        }
    }

    private static IEnumerable<string> TableRow(SheetRequest request, string id)
        => CutOutTables.Clear(request.Plan.Shell, request.Facts.CutOuts, Tape.ForSteel(request.Plan.Units)).Rows
            .Single(r => r.Count > 1 && r[0].Text.Split(' ')[0] == id).Select(c => c.Text);

    private static string Plain(string text) => Regex.Replace(text, "[ \u00A0]", "");
}
