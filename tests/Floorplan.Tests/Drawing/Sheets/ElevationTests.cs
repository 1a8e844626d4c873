using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Model.Shapes;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Sheet 7 shows what stands along each wall where it stands, as seen from inside.</summary>
public class ElevationTests
{
    private const string Plan = """
        plan "Box"
          units metric
        shell shed 6000 x 4000 x 2600
        room work "Work" dry from west to east
        door d1 work to outside, south wall, 400 from west, 900 x 2050, swings out
        window n1 work to outside, north wall, 400 from west, 1200 x 700, sill 1200
        station bench "Bench" in work, 1500 x 600 x 900, against north wall, 500 from west
        station island "Island" in work, 1000 x 800 x 850, centred, 2500 from west
        water w1 cold in work, north wall, 3000 from west, height 1150
        """;

    [Fact]
    public void West_is_at_the_left_of_a_north_wall_and_at_the_right_of_a_south_wall_seen_from_inside()
    {
        var pages = DrawnPlans.Draw(Plan, [7]);
        Assert.Equal(4, pages.Sum(p => Walls(p).Count));

        var bench = pages.PageWith("station:bench");
        Assert.True(Box(bench, "station:bench").Centre.X < Holding(bench, "station:bench").Centre.X);
        var door = pages.PageWith("opening:d1");
        Assert.True(Box(door, "opening:d1").Centre.X > Holding(door, "opening:d1").Centre.X);
    }

    [Fact]
    public void Heights_are_printed_and_what_stands_free_is_left_out()
    {
        var pages = DrawnPlans.Draw(Plan, [7]);
        string[] openings = Row(pages, "dimension:openings");
        Assert.Contains("2050", openings);
        Assert.Contains("1200", openings);
        Assert.Contains("1900", openings);
        string[] things = Row(pages, "dimension:things");
        Assert.Contains("900", things);
        Assert.Contains("1150", things);
        Assert.DoesNotContain("850", things);
        Assert.DoesNotContain(pages.Items<SceneItem>(), i => i.Group == "station:island");
    }

    [Theory]
    [InlineData("poultry-40ft")]
    [InlineData("goat-dairy-shed")]
    [InlineData("vegetable-l-shed")]
    public void Every_bench_against_an_outside_wall_is_on_the_elevation_of_that_wall(string template)
    {
        var request = DrawnPlans.Request(File.ReadAllText(Repository.At("templates", template + ".unit")));
        var pages = SheetSet.Draw(request, [7]);
        var inside = request.Plan.Shell.Finished.EnvelopeInternal;
        var against = request.Plan.Stations.Where(s => Compass.All.Any(side => side.RunsEastWest()
            ? Math.Abs(s.Bounds.Of(side).Millimetres - (side == Floorplan.Language.Syntax.Side.North ? inside.MaxY : inside.MinY)) < 1
            : Math.Abs(s.Bounds.Of(side).Millimetres - (side == Floorplan.Language.Syntax.Side.East ? inside.MaxX : inside.MinX)) < 1))
                .ToList();
        Assert.NotEmpty(against);
        Assert.All(against, s => Assert.Contains(pages.Items<SceneItem>(), i => i.Group == "station:" + s.Id));
    }

    /// <summary>Before, a panel without a height and one on a partition were on no elevation, and nothing said so.</summary>
    [Fact]
    public void A_point_that_cannot_be_drawn_is_named_with_the_reason()
    {
        string text = Plan + "\nroom lobby \"Lobby\" staff\n  area 1500 x 1500\n  in work\n  place corner south-east\npartitions\n"
            + "  thickness 60\npanel p1 in work, east wall, 2500 from south, 63 A 230 V\n"
            + "switch sw1 in lobby, west wall, 500 from south, height 1100\n";
        var pages = DrawnPlans.Draw(text, [7]);
        string words = string.Join(' ', pages.Texts().Select(t => t.Text));
        Assert.Contains("does not say how high: p1.", words);
        Assert.Contains("On a partition, so in none of these views: sw1;", words);
        Assert.DoesNotContain("w1.", words);
    }

    /// <summary>The ring with a cross of a point on the wall stands in the legend too.</summary>
    [Fact]
    public void The_legend_shows_a_point_as_it_is_drawn()
    {
        var sheet = DrawnPlans.Draw(Plan, [7])[0];
        Assert.Contains("point of water, power or air", Legend(sheet));
        var drawn = Ring(sheet, i => i.Group == "service:w1");
        Assert.Equal(2, drawn.Cross.Length);
        Assert.Equal(drawn, Ring(sheet, i => i.Layer == Layers.Legend), (a, b) => a.Radius == b.Radius && a.Cross.SequenceEqual(b.Cross));
    }

    [Fact]
    public void The_legend_lists_only_what_is_drawn()
    {
        string[] all = ["item that hangs", "item, see the key", "partition, cut", "point of water, power or air"];
        string bare = "plan \"x\"\nshell shed 6000 x 4000 x 2600\nroom a \"A\" dry from west to east\n";
        Assert.Equal([], Legend(DrawnPlans.Draw(bare, [7])[0]).Intersect(all));
        string shelf = bare + "station s \"Shelf\" in a, 900 x 300 x 300, at 0, 0, hung, underside 1500\n";
        Assert.Equal(["item that hangs"], Legend(DrawnPlans.Draw(shelf, [7])[0]).Intersect(all));
        string parted = bare.Replace("to east", "to 3000", StringComparison.Ordinal) + "room b \"B\" dry from 3000 to east\n";
        Assert.Equal(["partition, cut"], Legend(DrawnPlans.Draw(parted, [7])[0]).Intersect(all));
    }

    private static IEnumerable<string> Legend(SheetScene sheet)
        => sheet.Items.OfType<TextItem>().Where(t => t.Layer == Layers.Legend).Select(t => t.Text);

    /// <summary>The one circle, and how the lines inside it run from its middle.</summary>
    private static (double Radius, (double, double, double, double)[] Cross) Ring(SheetScene sheet, Func<SceneItem, bool> isOf)
    {
        var ring = sheet.Items.OfType<ArcItem>().Single(a => isOf(a));
        var box = PaperBox.Around(ring.Centre, 2 * ring.Radius, 2 * ring.Radius).Grown(0.01);
        double Off(double a, double b) => Math.Round(a - b, 2);
        return (ring.Radius, [.. sheet.Items.OfType<LineItem>()
            .Where(l => isOf(l) && box.Holds(PaperBox.Of([l.From, l.To])))
            .Select(l => (
                Off(l.From.X, ring.Centre.X), Off(l.From.Y, ring.Centre.Y), Off(l.To.X, ring.Centre.X), Off(l.To.Y, ring.Centre.Y)))]);
    }

    private static string[] Row(IEnumerable<SheetScene> pages, string group)
        => [.. pages.Texts().Where(t => t.Group == group).Select(t => t.Text)];

    private static PaperBox Box(SheetScene sheet, string group)
        => PaperBox.Of(sheet.Items.OfType<PolylineItem>().First(p => p.Group == group).Points);

    private static List<PaperBox> Walls(SheetScene page)
        => [.. page.Items.OfType<PolylineItem>().Where(p => p.Group == "wall").Select(p => PaperBox.Of(p.Points))];

    private static PaperBox Holding(SheetScene page, string group)
        => Walls(page).First(w => w.Grown(0.01).Holds(Box(page, group)));
}
