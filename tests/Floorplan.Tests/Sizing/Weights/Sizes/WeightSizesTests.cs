using Floorplan.Sizing;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Weights.Sizes;

public sealed class WeightSizesTests
{
    private const string Tank = """
        station tank "Tank" in work
          size 1000 x 800 x 1000
          place against north wall, 300 from west
          weight 60 kg empty, 700 kg full
        """;

    /// <summary>
    /// Statics by hand for an unlined box of 2300 kg (container trade figures) of 6058 mm (ISO 668) and a tank of 60 kg or 700 kg: about
    /// the middle of the box, and again about its south-west corner casting.
    /// </summary>
    [Theory]
    [InlineData("empty", 60)]
    [InlineData("full", 700)]
    public void The_corners_of_a_box_hold_box_and_tank(string state, double tank)
    {
        var facts = Box(Tank);
        var figures = facts.WeightSizes!.Figures.ToDictionary(f => f.Name);
        var station = facts.Plan.Stations[0].Footprint.EnvelopeInternal.Centre;
        var middle = facts.Plan.Shell.Outside.EnvelopeInternal.Centre;
        double Corner(string name) => figures[$"weight on the {name} corner, {state}"].Value;

        double east = Corner("south-east") + Corner("north-east");
        double north = Corner("north-west") + Corner("north-east");
        Assert.Equal(2300 + tank, east + Corner("south-west") + Corner("north-west"), 1e-6);
        Assert.Equal(tank * (station.X - middle.X), (east * 5853) - ((2300 + tank) * 5853 / 2), 1.0);
        Assert.Equal(tank * (station.Y - middle.Y), (north * 2259) - ((2300 + tank) * 2259 / 2), 1.0);
    }

    [Fact]
    public void A_heavy_tank_at_one_end_is_told_to_the_crane_crew()
    {
        string tank = Tank.Replace("60 kg empty", "1500 kg empty", StringComparison.Ordinal)
            .Replace("700 kg full", "1500 kg full", StringComparison.Ordinal);

        Assert.Contains(Box(tank).WeightSizes!.Cautions, c => c.Contains("hangs askew", StringComparison.Ordinal));
        Assert.DoesNotContain(Box(Tank).WeightSizes!.Cautions, c => c.Contains("when empty", StringComparison.Ordinal));
    }

    /// <summary>78 kg a person, from memory; 60 fish/h for 5 h of 0.8 kg are 240 kg.</summary>
    [Fact]
    public void People_and_a_days_product_weigh_at_work()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(File.ReadAllText(Architecture.Repository.At("templates", "fish-20ft.unit"))));

        Assert.Equal(3 * 78, facts.WorkingWeight.People!.Value, 1e-6);
        Assert.Equal(50 * 4 * 0.8, facts.WorkingWeight.Product!.Value, 1e-6);
        Assert.Equal(facts.Weight.Full.Value + 234 + 160, facts.WorkingWeight.Together.Value, 1e-6);
    }

    [Fact]
    public void What_has_no_weight_in_the_plan_is_told_with_what_to_write()
    {
        var missing = Box("""
            station bench "Bench" in work
              size 1000 x 800 x 900
              place against north wall, 300 from west
            """).WeightSizes!.Missing;

        Assert.Contains(missing, m => m.What == "weight of Bench" && m.Write == "weight 60 kg empty, 90 kg full");
    }

    [Fact]
    public void A_shed_is_not_weighed() => Assert.Null(CheckedPlan.Facts(CheckedPlan.Plan("""
        plan "Shed"
          units metric
        shell shed 6 m x 4 m x 2.5 m
        room work "Work room" dry from west to east
        """)).WeightSizes);

    /// <summary>More in it is never lighter, at any corner of the list.</summary>
    [Theory]
    [InlineData(100), InlineData(700), InlineData(5000)]
    public void More_in_the_tank_is_never_lighter(int kilograms)
    {
        double Total(int kg) => Box(Tank.Replace("700 kg", $"{kg} kg", StringComparison.Ordinal)).WorkingWeight.Together.Value;

        Assert.True(Total(kilograms + 50) > Total(kilograms));
    }

    /// <summary>The same box told in feet.</summary>
    [Fact]
    public void Feet_and_metric_agree()
    {
        SizedSubject Of(string units) => CheckedPlan.Facts(CheckedPlan.Plan($"""
            plan "Box"
              units {units}
            shell container 20 ft standard
              doors west
            room work "Work room" dry from west to east
            {Tank.Replace("1000 x 800 x 1000", "1000 mm x 800 mm x 1000 mm", StringComparison.Ordinal)
                .Replace("300 from", "300 mm from", StringComparison.Ordinal)}
            """)).WeightSizes!;

        var (metric, feet) = (Of("metric"), Of("feet"));

        Assert.Equal(metric.Figures.Select(f => f.Name), feet.Figures.Select(f => f.Name));
        foreach (var (a, b) in metric.Figures.Zip(feet.Figures).Where(p => !p.First.Name.Contains("leg", StringComparison.Ordinal)))
        {
            Assert.Equal(a.Value, b.Value, 1e-6);
        }
    }

    [Fact]
    public void Every_figure_of_a_row_or_table_is_among_the_figures()
    {
        var subject = Box(Tank).WeightSizes!;
        var all = new HashSet<Figure>(subject.Figures, ReferenceEqualityComparer.Instance);

        Assert.All(subject.Rows.Where(r => r.Figure is not null), r => Assert.Contains(r.Figure!, all));
        Assert.All(subject.Tables.SelectMany(t => t.Figures), f => Assert.Contains(f, all));
        Assert.Equal(subject.Figures.Count, subject.Figures.Select(f => (f.Name, f.Of)).Distinct().Count());
    }

    private static PlanFacts Box(string things) => CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Box"
          units metric
        shell container 20 ft standard
          doors west
        room work "Work room" dry from west to east
        {things}
        """));
}
