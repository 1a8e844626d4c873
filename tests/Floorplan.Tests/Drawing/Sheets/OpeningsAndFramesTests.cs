using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>What the welder reads off sheet 6: every hole at its place and size, on the picture, in the rows and in the tables.</summary>
public class OpeningsAndFramesTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_hole_is_drawn_true_to_scale_and_stands_in_the_rows_and_tables(string template)
    {
        var request = Request(template);
        var cuts = CutOuts.Of(request.Plan);
        Assert.NotEmpty(cuts);
        var pages = SheetSet.Draw(request, [6]);
        var units = request.Plan.Units;
        foreach (var cut in cuts)
        {
            var sheet = pages.PageWith("cut:" + cut.Opening.Id);
            double denominator = Denominator(sheet);
            var hole =
                PaperBox.Of(sheet.Items.OfType<PolylineItem>()
                    .First(p => p.Group == "cut:" + cut.Opening.Id && p.Layer == "S-OPNG").Points);
            Assert.Equal(cut.Width.Millimetres, hole.Width * denominator, 3);
            Assert.Equal(cut.Height.Millimetres, hole.Height * denominator, 3);

            AssertInRow(sheet, "dimension:datum:along", Printed(cut.Along, units));
            AssertInRow(sheet, "dimension:datum:along", Printed(cut.Right, units));
            AssertInRow(sheet, "dimension:datum:up", Printed(cut.Top, units));
            AssertInTables(pages, Printed(cut.Along, units));
            AssertInTables(pages, $"{Printed(cut.Width, units)}×{Printed(cut.Height, units)}");
        }
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_piece_to_saw_is_in_exactly_one_bar(string template)
    {
        var request = Request(template);
        var list = CutList.Of(CutOuts.Of(request.Plan), request.Plan.Units);
        Assert.Equal(
            list.Rows.SelectMany(r => Enumerable.Repeat((r.Opening, r.Piece.Part, r.Piece.Length), r.Count)).Order(),
            request.Stock.SelectMany(s => s.Bars).SelectMany(b => b.Pieces).Select(p => (p.For, p.Part, p.Length)).Order());
        Assert.All(request.Stock, s => Assert.True(s.IsFewest));

        var texts = SheetSet.Draw(request, [6]).Texts().Select(t => t.Text).ToList();
        Assert.All(list.Rows, r => Assert.Contains(Printed(r.Piece.Length, request.Plan.Units), texts));
    }

    /// <summary>
    /// Added up by hand from the printed lengths: 2 × 3'-4" + 3'-2" + 4 × 7'-0 5/8" + 2 × 6'-10 5/8" = 51'-9 3/4"; of a bar of 20 ft,
    /// two posts of 7'-0 5/8", a head of 3'-4" and three cuts of 1/8" leave 2'-6 3/8".
    /// </summary>
    [Fact]
    public void What_is_sawn_adds_up_as_printed()
    {
        var texts = SheetSet.Draw(Request("poultry-40ft"), [6]).Texts().Where(t => t.Layer == Layers.Schedule)
            .Select(t => t.Text.Replace('\u00A0', ' ')).ToList();
        Assert.Equal(["9", "51'-9 3/4\""], texts.SkipWhile(t => t != "all").Skip(1).Take(2));
        Assert.Equal(["2 × d1 post, d1 head", "2'-6 3/8\""], texts.SkipWhile(t => t != "2 × d1 post, d1 head").Take(2));
    }

    /// <summary>From outside, the west end of a north wall is at the right, and its rows count from there.</summary>
    [Fact]
    public void A_north_wall_is_seen_from_outside()
    {
        var sheet = DrawnPlans.Draw(
            """
            plan "Box"
              units metric
            shell container 20 ft standard
            room work "Work" dry from west to east
            door d1 work to outside, north wall, 500 from west, 900 x 2050, swings out
            """, [6]).PageWith("cut:d1");
        var hole = Middle(sheet, "cut:d1");
        var wall = Middle(sheet, "wall");
        Assert.True(hole > wall, $"{hole} is left of {wall}");
        var origin = sheet.Items.OfType<ArcItem>().Single(a => a.Group == "dimension:datum:along");
        Assert.True(origin.Centre.X > hole);
    }

    /// <summary>The inner wall of an L begins away from the datum: its row reaches there, over paper of its own.</summary>
    [Fact]
    public void Rows_of_one_wall_stay_clear_of_the_next()
    {
        var pages = SheetSet.Draw(Request("vegetable-l-shed"), [6]);
        Assert.Contains(pages.Items<LineItem>(), l => l.Group == "dimension:datum:along");
        Assert.All(pages, AssertRowsAreClear);
    }

    private static void AssertRowsAreClear(SheetScene sheet)
    {
        var walls = sheet.Items.OfType<PolylineItem>().Where(p => p.Group == "wall").Select(p => PaperBox.Of(p.Points)).ToList();
        var rows = sheet.Items.OfType<LineItem>().Where(l => l.Group == "dimension:datum:along").ToList();
        Assert.All(rows, r => Assert.DoesNotContain(walls, w => w.Grown(-1).IsCutBy(r.From, r.To) && r.From.Y == r.To.Y));
        var along = rows.Where(r => r.From.Y == r.To.Y).ToList();
        Assert.All(
            along, a
                => Assert.DoesNotContain(along, b => !ReferenceEquals(a, b)
                    && a.From.Y == b.From.Y
                    && Math.Max(a.From.X, b.From.X) < Math.Min(a.To.X, b.To.X)));
    }

    [Fact]
    public void A_plan_without_holes_still_gives_a_sheet()
    {
        var pages = DrawnPlans.Draw("plan \"Box\"\nshell container 20 ft standard\nroom work \"Work\" dry from west to east\n", [6]);
        Assert.Contains(pages.Texts(), t => t.Text.Contains("No holes in", StringComparison.Ordinal));
    }

    private static double Middle(SheetScene sheet, string group)
        => PaperBox.Of(sheet.Items.OfType<PolylineItem>().First(p => p.Group == group).Points).Centre.X;

    private static SheetRequest Request(string template)
        => DrawnPlans.Request(File.ReadAllText(Repository.At("templates", template + ".unit")));

    /// <summary>As the title block says it: <c>1:50</c> or <c>1/4" = 1'-0" (1:48)</c>.</summary>
    private static double Denominator(SheetScene sheet)
    {
        string scale = sheet.Items.OfType<TextItem>()
            .First(t => t.Layer == "A-ANNO-TTLB" && t.Text.Contains("1:", StringComparison.Ordinal)).Text;
        return double.Parse(scale.Split("1:")[1].TrimEnd(')'), System.Globalization.CultureInfo.InvariantCulture);
    }

    private static string Printed(Length length, UnitSystem units) => Tape.ForSteel(units).Cell(length);

    private static void AssertInRow(SheetScene sheet, string group, string figure) =>
        Assert.Contains(sheet.Items.OfType<TextItem>(), t => t.Group == group && t.Text.Replace(' ', '\u00A0') == figure);

    private static void AssertInTables(IEnumerable<SheetScene> pages, string figure) =>
        Assert.Contains(pages.Texts(), t => t.Group?.StartsWith("dimension", StringComparison.Ordinal) != true
            && t.Text == figure);
}
