using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Schedules;
using Floorplan.Sizing;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Weights;

public sealed class UnitWeightTests
{
    private const string Tank = """
        station tank "Tank" in work
          size 1000 x 800 x 1000
          place against north wall, 1000 from west
          weight 60 kg empty, 700 kg full
        """;

    /// <summary>
    /// ISO 668 (public copy): a 20 ft box is 6058 mm long; container trade figures: 2300 kg empty. A door of 900 x 2050 without a sill: by
    /// EN 10219-2 a tube of 50 x 50 x 3 weighs 4.25 kg/m, its head 1.0 m and its two posts; the rest from the tables of linings.
    /// </summary>
    [Fact]
    public void The_parts_of_a_box_add_up_to_what_it_weighs()
    {
        var facts = Facts(Tank);

        Assert.Equal(
            ["bare shell", "wall lining", "ceiling lining", "floor build-up", "frames of openings", "things with a weight"],
            facts.Weight.Parts.Select(p => p.Name.Split(':')[0]));
        Assert.Equal(2300, facts.Weight.Parts[0].Full.Value);
        Assert.Equal(facts.CutList.Totals.Sum(t => t.Length.Metres) * 4.25, facts.Weight.Parts[4].Full.Value, 0.1);
        Assert.Equal(640, facts.Weight.Full.Value - facts.Weight.Empty.Value, 1e-6);
        Assert.Equal(facts.Weight.Parts.Sum(p => p.Full.Value), facts.Weight.Full.Value, 1e-6);
    }

    /// <summary>Water weighs 1 kg a litre: an 8 kg bin of 60 L is 68 kg full. Lifting and weights had 60 kg and 8 kg.</summary>
    [Fact]
    public void A_bin_weighs_the_same_for_lifting_and_for_the_floor()
    {
        var facts = Facts("""
            bin offal 60 L in work, 400 x 400, against north wall, 1000 from west
              weight 8 kg
            flow waste
              offal -> d1 -> outside by hand
            """);

        Assert.Equal(68, Assert.Single(facts.Items.Weighed).Full.Value, 1e-6);
        Assert.Equal(8, facts.Items.Weighed[0].Empty.Value, 1e-6);
        Assert.True(facts.Items.Weighed[0].EmptyIsSaid);
        Assert.Equal(68, Assert.Single(facts.Lifts).Load!.Value, 1e-6);
    }

    [Fact]
    public void Water_in_a_heater_counts_when_full()
    {
        var facts = Facts("heater wh1 in work, north wall, 300 from west, 9 kW 150 L");

        Assert.Equal(150, facts.Weight.Full.Value - facts.Weight.Empty.Value, 1e-6);
    }

    [Fact]
    public void The_schedule_lists_the_parts_with_the_same_objects()
    {
        var facts = Facts(Tank);

        var rows = Schedule.All(facts).Single(s => s.Name == "weights").Rows;

        Assert.Equal(
            [.. facts.Weight.Parts.Select(p => p.Full), facts.Weight.Full], rows.Select(r => ((Cell)r[2]!).Figures.Single()),
            ReferenceEqualityComparer.Instance);
    }

    /// <summary>Every number that a weight is made of comes from a line, a source or another figure, down to the last.</summary>
    [Fact]
    public void A_weight_can_be_followed_to_lines_and_sources()
    {
        var facts = Facts("bin offal 60 L in work, 400 x 400, against north wall, 1000 from west");
        var left = new Queue<Figure>([facts.Weight.Full]);
        int seen = 0;
        while (left.TryDequeue(out var figure))
        {
            seen++;
            Assert.NotEmpty(figure.Substituted);
            foreach (var input in figure.Inputs)
            {
                Assert.Equal(1, (input.Line is null ? 0 : 1) + (input.Source is null ? 0 : 1) + (input.Worked is null ? 0 : 1));
                if (input.Worked is { } worked)
                {
                    left.Enqueue(worked);
                }
            }
        }

        Assert.InRange(seen, 10, 100);
    }

    private static PlanFacts Facts(string more) => CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Box"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors  west
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out, opens from inside
        {more}
        """));
}
