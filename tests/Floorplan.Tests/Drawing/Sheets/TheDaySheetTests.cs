using System.Globalization;
using System.Text;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Floorplan.Tests.Sizing.Simulation;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>What sheet 10 draws is what the day's run says, measured on the paper.</summary>
public sealed class TheDaySheetTests
{
    /// <summary>Bytes of a page, as the task asks.</summary>
    private const int MostBytes = 300_000;
    private const string Dark = "#404040";

    public static TheoryData<string> Plans => ["fish-20ft", "game-trailer", "goat-dairy-shed", "poultry-40ft", "vegetable-l-shed"];

    [Theory, MemberData(nameof(Plans))]
    public void A_page_is_no_large_file(string plan)
        => Assert.All(
            DrawnPlans.Template(plan).OfSheet(10), p => Assert.InRange(Encoding.UTF8.GetByteCount(SvgWriter.Write(p)), 1, MostBytes));

    /// <summary>The dark part of a person's lane is as large as the share of the day that the person worked.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void The_dark_area_of_a_lane_is_the_time_of_hand_work(string plan)
    {
        var day = Facts(DrawnPlans.Text(plan)).DayInTime!;
        var pages = DrawnPlans.Template(plan).OfSheet(10);
        foreach (var (lane, state) in day.People.Select(l => (l, DayState.Work)).Concat(day.Stations.Select(l => (l, DayState.ByHand))))
        {
            string group = "lane:" + lane.Name;
            var frame = pages.Items<PolylineItem>().Where(i => i.Group == group && i.Closed).Select(i => PaperBox.Of(i.Points))
                .MaxBy(b => b.Width * b.Height);
            double dark = pages.Items<AreaItem>().Where(i => i.Group == group && i.Fill == Dark).SelectMany(i => i.Rings).Sum(Area);
            double said = lane.Slots.Index().Sum(
                s => s.Item[(int)state] * (Math.Min(day.End, (s.Index + 1) * day.Slot) - (s.Index * day.Slot))) / day.End;
            Assert.Equal(said, dark / (frame.Width * frame.Height), 0.005);
        }
    }

    /// <summary>The triangle at a store points at the time that the finding names.</summary>
    [Fact]
    public void The_mark_of_a_full_store_stands_at_its_time()
    {
        string text = new DayLine { Store = "holds 200 birds" }.Text;
        var curve = Facts(text).DayInTime!.Fills.Single(f => f.Of == "rack");
        var pages = DrawnPlans.Draw(text, [10]);
        var mark = Assert.Single(pages.Items<AreaItem>(), i => i.Group?.EndsWith("Rack:full", StringComparison.Ordinal) == true);
        var tip = mark.Rings[0][0];
        string title = mark.Group![..^":full".Length];
        double start = X("0:00");
        double hour = X("1:00") - start;
        Assert.Equal(curve.FullAt!.Value / (double)Ticks.Hour, (tip.X - start) / hour, 0.005);
        Assert.Contains(
            pages.Texts(), t => t.Group == title && t.Text.Contains("holds 200; full at 1:", StringComparison.Ordinal));

        double X(string time) => pages.Texts().Single(t => t.Group == title && t.Text == time).At.X;
    }

    [Theory, MemberData(nameof(Plans))]
    public void Times_of_people_and_stations_stand_under_each_other(string plan)
    {
        var texts = DrawnPlans.Template(plan).OfSheet(10).Texts().ToList();
        var people = Times("What people do");
        Assert.True(people.Count > 4);
        Assert.Equal(people, Times("What stations do"));

        List<string> Times(string title) =>
        [
            .. texts.Where(t => t.Group == title && t.Text.Contains(':', StringComparison.Ordinal) && char.IsAsciiDigit(t.Text[0]))
                .Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Text} {t.At.X:0.00}")),
        ];
    }

    [Fact]
    public void A_day_that_cannot_be_run_says_what_to_write()
    {
        string text = string.Join('\n', DrawnPlans.Draw(new DayLine { Bench = "waits 16 birds" }.Text, [10]).Texts().Select(t => t.Text));
        Assert.Contains("The day was not run", text, StringComparison.Ordinal);
        Assert.Contains("no time for bench", text, StringComparison.Ordinal);
        Assert.Contains("work 20 s each", text, StringComparison.Ordinal);
    }

    /// <summary>Shoelace formula.</summary>
    private static double Area(IReadOnlyList<PaperPoint> ring)
        => Math.Abs(ring.Zip([.. ring.Skip(1), ring[0]]).Sum(e => (e.First.X * e.Second.Y) - (e.Second.X * e.First.Y))) / 2;

    private static PlanFacts Facts(string text)
    {
        var plan = CheckedPlan.Plan(text);
        return new PlanFacts(plan, new FloorSpace(plan));
    }
}
