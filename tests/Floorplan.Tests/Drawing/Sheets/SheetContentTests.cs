using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>What is in the plan is on the sheet, at its place.</summary>
public class SheetContentTests
{
    private const string Shell = "wall:shell";

    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_station_has_its_number_on_the_plan_and_in_the_key(string template)
    {
        var request = DrawnPlans.Request(Text(template));
        var texts = SheetSet.Draw(request, [1]).Texts().ToList();
        Assert.NotEmpty(request.Plan.Stations);
        foreach (var station in request.Plan.Stations)
        {
            string number = $"{station.Item}";
            Assert.Single(texts, t => t.Text == number && t.Group == "station:" + station.Id);
            Assert.Contains(texts, t => t.Text == number && t.Layer == Layers.Schedule);
        }
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_leg_with_a_route_is_an_arrow_with_its_mark_and_a_line_of_the_table(string template)
    {
        var request = DrawnPlans.Request(Text(template));
        var pages = SheetSet.Draw(request, [2]);
        var legs = FlowLeg.Number(request.Space.LegRoutes, request.Plan.Units);
        Assert.NotEmpty(legs);
        foreach (var leg in legs)
        {
            Assert.Contains(pages.Texts(), t => t.Layer == Layers.Schedule && t.Text == leg.Mark);
            if (leg.Route.Route is not null)
            {
                Assert.Contains(pages.Items<AreaItem>(), a => a.Group == "leg:" + leg.Mark);
                Assert.Contains(pages.Texts(), t => t.Group == "leg:" + leg.Mark
                    && t.Text.StartsWith(leg.Mark, StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void An_arrow_ends_where_its_route_ends_and_points_along_it()
    {
        var request = DrawnPlans.Request(Text("fish-20ft"));
        var sheet = SheetSet.Draw(request, [2]).PageWith(Shell);
        var transform = TransformOf(sheet, request);
        foreach (var leg in FlowLeg.Number(request.Space.LegRoutes, request.Plan.Units).Where(l => l.Route.Route is not null))
        {
            // Lanes may set a shared route a few millimetres aside.
            var end = transform.ToPaper(leg.Way[^1]);
            var heads = sheet.Items.OfType<AreaItem>().Where(a => a.Group == "leg:" + leg.Mark).SelectMany(a => a.Rings).SelectMany(r => r);
            Assert.True(heads.Min(p => Distance(p, end)) < 6, $"no head of {leg.Mark} near its end");
        }
    }

    [Fact]
    public void A_station_moved_in_the_text_moves_on_the_sheet_by_as_much()
    {
        string text = Text("empty-start");
        string moved = text.Replace("against north wall, centred", "against north wall, 700 from west", StringComparison.Ordinal);
        Assert.NotEqual(text, moved);
        var before = DrawnPlans.Request(text);
        var after = DrawnPlans.Request(moved);
        double planMove = after.Plan.Stations[0].Bounds.West.Millimetres - before.Plan.Stations[0].Bounds.West.Millimetres;
        Assert.NotEqual(0, planMove);

        var first = SheetSet.Draw(before, [1]).PageWith(Shell);
        var second = SheetSet.Draw(after, [1]).PageWith(Shell);
        var transform = TransformOf(first, before);

        Assert.Equal(planMove / transform.Denominator, Outline(second).Left - Outline(first).Left, 6);
        Assert.Equal(Outline(first).Top, Outline(second).Top, 6);
    }

    [Fact]
    public void Everything_is_drawn_to_the_scale_that_the_sheet_names()
    {
        foreach (string template in DrawnPlans.Templates)
        {
            var request = DrawnPlans.Request(Text(template));

            // Sheet 6 shows walls from outside; OpeningsAndFramesTests measures it.
            var plans = SheetSet.Draw(request, [1, 2, 3, 4, 5]).Where(p => p.Items.Any(i => i.Group == Shell)).ToList();
            Assert.Equal([1, 2, 3, 4, 5], plans.Select(p => p.Sheet).Distinct());
            foreach (var sheet in plans)
            {
                double denominator = Measured(sheet, request);
                Assert.Contains(sheet.Items.OfType<TextItem>(), t => t.Text.EndsWith($"1:{denominator:0}", StringComparison.Ordinal)
                    || t.Text.EndsWith($"(1:{denominator:0})", StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void The_bar_scale_is_as_long_as_it_says()
    {
        foreach (string template in DrawnPlans.Templates)
        {
            var request = DrawnPlans.Request(Text(template));
            var sheet = SheetSet.Draw(request, [1]).PageWith(Shell);
            var bar = PaperBox.Of([.. sheet.Items.OfType<PolylineItem>().Where(p => p.Group == "bar scale").SelectMany(p => p.Points)]);
            string last = sheet.Items.OfType<TextItem>().Where(t => t.Group == "bar scale").MaxBy(t => t.At.X)!.Text;
            double unit = last.EndsWith(" m", StringComparison.Ordinal) ? 1000 : 304.8;
            double says = double.Parse(last.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) * unit;

            Assert.Equal(says / Measured(sheet, request), bar.Width, 6);
        }
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_finding_with_a_place_is_marked_by_the_number_of_its_line(string template)
    {
        var request = DrawnPlans.Request(Text(template));
        var pages = SheetSet.Draw(request, [2]);
        for (int i = 0; i < request.Findings.Count; i++)
        {
            string number = $"{i + 1}";
            Assert.Contains(pages.Texts(), t => t.Layer == Layers.Finding && t.Text == number && t.Group is null);
            if (request.Findings[i].At is not null)
            {
                Assert.Contains(pages.Texts(), t => t.Layer == Layers.Finding
                    && t.Group is not null
                    && t.Text.Split(", ").Contains(number));
            }
        }
    }

    private static string Text(string template) => File.ReadAllText(Repository.At("templates", template + ".unit"));

    private static PaperBox Outline(SheetScene sheet) =>
        PaperBox.Of(sheet.Items.OfType<PolylineItem>().Where(p => p.Group == "station:bench" && p.Closed)
            .MaxBy(p => PaperBox.Of(p.Points).Width)!.Points);

    /// <summary>From all stations that are whole on the page, and from the shell where the page has all of it.</summary>
    private static double Measured(SheetScene sheet, SheetRequest request)
    {
        var ofStations =
            from station in request.Plan.Stations
            let outlines = sheet.Items.OfType<PolylineItem>().Where(p => p.Closed && p.Group == "station:" + station.Id).ToList()
            where outlines.Count > 0
            let box = outlines.Select(p => PaperBox.Of(p.Points)).MaxBy(b => b.Width * b.Height)
            let along = station.Bounds.Width.Millimetres / box.Width
            let across = station.Bounds.Depth.Millimetres / box.Height
            where Math.Abs(along - across) < 1e-6
            select Math.Round(along, 6);
        bool whole = !sheet.Items.Any(i => i.Group == "match line");
        return Assert.Single(ofStations.Concat(whole ? [TransformOf(sheet, request).Denominator] : []).Distinct());
    }

    /// <summary>From two outlines that are on the plan and on the sheet: the outside of the shell.</summary>
    private static PlanTransform TransformOf(SheetScene sheet, SheetRequest request)
    {
        var shell = PaperBox.Of([.. sheet.Items.OfType<PolylineItem>().Where(p => p.Group == Shell).SelectMany(p => p.Points)]);
        var outside = request.Plan.Shell.Outside.EnvelopeInternal;
        double denominator = outside.Width / shell.Width;
        Assert.Equal(outside.Height / denominator, shell.Height, 6);
        return new PlanTransform(
            Math.Round(denominator, 6),
            new PaperPoint(shell.Left - (outside.MinX / denominator), shell.Bottom + (outside.MinY / denominator)));
    }

    private static double Distance(PaperPoint a, PaperPoint b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
