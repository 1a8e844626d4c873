using Floorplan.Sizing;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Sizes;

/// <summary>Sizes of whole plans: every figure is traced, and what must follow follows.</summary>
public class PlanSizesTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    /// <summary>Each input comes from a line of the plan, a source, or a figure that stands before it.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void Every_figure_of_a_template_is_traced_to_a_line_or_a_source(string template)
    {
        var facts = Facts(template);
        foreach (var subject in facts.Sizes.Subjects)
        {
            Assert.NotEmpty(subject.Rows);
            Assert.NotEmpty(subject.Cautions);
            var known = new HashSet<Figure>(ReferenceEqualityComparer.Instance);
            foreach (var figure in subject.Figures)
            {
                Assert.True(double.IsFinite(figure.Value), figure.ToString());
                Assert.NotEmpty(figure.Formula);
                Assert.NotEmpty(figure.Substituted);
                Assert.NotEmpty(figure.Source.Title);
                Assert.All(figure.Inputs, i => Assert.True(
                    (i.Line is not null ? 1 : 0) + (i.Source is not null ? 1 : 0) + (i.Worked is not null ? 1 : 0) == 1,
                    $"{figure}: {i.Name} comes from nowhere"));
                known.Add(figure);
            }

            Assert.All(subject.Rows, r => Assert.True(r.Figure is null || known.Contains(r.Figure),
                $"{subject.Name}: {r.What} has no working"));
            Assert.All(subject.Tables, t => Assert.All(t.Rows, r => Assert.Equal(t.Heads.Count, r.Count)));
        }
    }

    /// <summary>No two figures of a plan have one name and thing and are different objects.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void A_figure_is_worked_out_once(string template)
        => Assert.All(
            Facts(template).Sizes.Figures.GroupBy(f => (f.Name, f.Of)),
            g => Assert.True(g.Count() == 1, $"{g.Key}: {string.Join(", ", g.Select(f => f.Text))}"));

    /// <summary>By the code more draws at once than by the day, for nothing says that all is open then.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void The_peak_of_the_code_is_no_less_than_that_of_the_day(string template)
    {
        if (Facts(template).WaterSized is { InDay: { } inDay, Piping.AtOnce: { } atOnce })
        {
            Assert.True(inDay.Value <= atOnce.Value * (1 + 1e-9), $"{inDay} > {atOnce}");
        }
    }

    [Theory, MemberData(nameof(Templates))]
    public void What_comes_in_in_a_day_adds_up(string template)
    {
        if (Facts(template).WaterSized is { Day: { } day })
        {
            double parts = day.Working.Values.Concat(day.Fills.Values).Sum(f => f.Value) + (day.WashDown?.Value ?? 0)
                + (day.HandWash?.Value ?? 0);
            Assert.Equal(parts, day.Total.Value, 1e-9);
        }
    }

    /// <summary>More water to a bench never makes a pipe, a heater, a day or a drain smaller.</summary>
    [Fact]
    public void More_flow_never_sizes_anything_smaller()
    {
        PlanFacts? before = null;
        foreach (int flow in new[] { 2, 4, 8, 16, 32, 64, 128 })
        {
            string text = File.ReadAllText(Repository.At("templates", "fish-20ft.unit"))
                .Replace("needs    cold 8 L/min, drain", $"needs    cold {flow} L/min, hot {flow} L/min at 50 C, drain",
                    StringComparison.Ordinal);
            var facts = CheckedPlan.Facts(CheckedPlan.Plan(text));
            if (before is not null)
            {
                Assert.True(facts.WaterPiping!.AtOnce.Value >= before.WaterPiping!.AtOnce.Value);
                Assert.True(facts.WaterSized!.Day!.Total.Value >= before.WaterSized!.Day!.Total.Value);
                Assert.True(facts.WaterPiping!.Network.Pipes[0].Bore!.Value >= before.WaterPiping!.Network.Pipes[0].Bore!.Value);
                Assert.True(facts.HotWaterSized!.Hour!.Litres.Value >= before.HotWaterSized!.Hour!.Litres.Value);
                Assert.All(
                    facts.DrainLines.Lines.Zip(before.DrainLines.Lines),
                    l => Assert.True(l.First.Needed!.Nominal >= l.Second.Needed!.Nominal));
            }

            before = facts;
        }
    }

    /// <summary>One small unit written in mm and litres, and in feet and gallons.</summary>
    [Fact]
    public void Metric_and_feet_plans_agree()
    {
        var metric = CheckedPlan.Facts(CheckedPlan.Plan(Unit("metric", "mm", "11.356235352 L/min", "4 m", "63 C")));
        var feet = CheckedPlan.Facts(CheckedPlan.Plan(Unit("feet", "mm", "3 gpm", "4 m", "145.4 F")));
        Assert.Equal(metric.WaterPiping!.AtOnce.Value, feet.WaterPiping!.AtOnce.Value, 1e-9);
        Assert.Equal(metric.WaterSized!.Day!.Total.Value, feet.WaterSized!.Day!.Total.Value, 1e-9);
        Assert.Equal(metric.HotWaterSized!.Hour!.Litres.Value, feet.HotWaterSized!.Hour!.Litres.Value, 1e-9);
        Assert.Equal(metric.DrainLines.Lines[0].Fall.Value, feet.DrainLines.Lines[0].Fall.Value, 1e-6);
    }

    private static string Unit(string units, string mm, string flow, string hose, string hot) => $"""
        plan "A"
          units {units}
          code us
          product crates, 8 kg each
        shell container 20 ft high-cube
          ground 500 {mm} below floor
        room r "Room" dirty from west to east
        door d1 r to outside, south wall, 400 {mm} from west, 900 {mm} x 2050 {mm}, swings out
        station bench "Bench" in r
          size 1200 {mm} x 600 {mm} x 900 {mm}
          place against north wall, 500 {mm} from west
          worker south
          work 30 s each
          needs cold {flow}, hot {flow} at {hot}, drain
        water w1 cold hot in r, north wall, 2000 {mm} from west, height 1200 {mm}
        hose hz1 on w1, {hose}
        drain fd1 floor in r, 3000 {mm} from west, centred, 100 {mm}
        flow product
          outside -> d1 -> bench -> d1 -> outside by hand
        day
          target 60 crates/h for 2 h
          crew r 1
          wash-down 1 h
        """;

    [Fact]
    public void Rows_without_figures_are_told_with_what_to_write()
    {
        var water = CheckedPlan.Facts(CheckedPlan.Plan("""
            plan "A"
            shell container 20 ft high-cube
            room r "Room" dirty from west to east
            station bench "Bench" in r
              size 1200 x 600 x 900
              place against north wall, 500 from west
              needs cold, drain
            """)).WaterSizes!;
        Assert.Contains(water.Missing, m => m.What == "flow of cold water to bench" && m.Quoted == "`needs cold 8 L/min` in station bench");
        Assert.Contains(water.Missing, m => m.Quoted == "`mains 3 bar, 10 C` in the plan's head");
        Assert.Contains(water.Missing, m => m.What == "where the water comes in");
    }

    /// <summary>A vat that is filled once a day takes what it holds, 400 kg of water, and not its tap's flow all the time it is in
    /// use.</summary>
    [Fact]
    public void Water_that_only_fills_is_counted_once()
    {
        string text = File.ReadAllText(Repository.At("templates", "goat-dairy-shed.unit"));
        var fills = CheckedPlan.Facts(CheckedPlan.Plan(text)).WaterSized!.Day!;
        var runs = CheckedPlan.Facts(CheckedPlan.Plan(text.Replace(" to fill", "", StringComparison.Ordinal))).WaterSized!.Day!;

        Assert.DoesNotContain("vat", fills.Working.Keys);
        Assert.Equal(0.4, fills.Fills["vat"].Value, 3);
        double seconds = CheckedPlan.Facts(CheckedPlan.Plan(text)).Running!.Seconds("vat")!.Value;
        Assert.Equal(24 / 60_000.0 * seconds, runs.Total.Value - fills.Total.Value, 6);
    }

    /// <summary>Energy balance of the day: the parts and nothing else, and every lamp more takes more.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void Energy_of_a_day_is_the_sum_of_its_parts(string template)
    {
        if (Energy(Facts(template)) is not { } energy)
        {
            return;
        }

        Assert.Equal(energy.Value, energy.Inputs.Sum(i => i.Worked!.Value), 1e-6 * energy.Value);
        string text = File.ReadAllText(Repository.At("templates", template + ".unit"));
        string brighter = text.Replace(" 540 lux", " 2000 lux", StringComparison.Ordinal).Replace(" 50 fc", " 190 fc",
            StringComparison.Ordinal);
        Assert.NotEqual(text, brighter);
        Assert.True(Energy(CheckedPlan.Facts(CheckedPlan.Plan(brighter)))!.Value > energy.Value);
    }

    private static Figure? Energy(PlanFacts facts) => facts.PowerSizes?.Figures.SingleOrDefault(f => f.Name == "energy a day");

    [Fact]
    public void A_plan_without_services_has_nothing_to_size()
    {
        var plan = CheckedPlan.Plan("plan \"A\"\nshell container 20 ft high-cube\nroom r \"R\" dry from west to east");
        Assert.Null(CheckedPlan.Facts(plan).WaterSizes);
    }

    private static PlanFacts Facts(string template)
        => CheckedPlan.Facts(CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template + ".unit"))));
}
