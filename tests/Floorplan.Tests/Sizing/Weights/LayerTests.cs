using Floorplan.Sizing.Weights;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Weights;

/// <summary>What linings, floors and partitions weigh, against figures of outside.</summary>
public sealed class LayerTests
{
    /// <summary>
    /// Two steel sheets of 0.5 mm (7850 kg/m³, BS 648:1964) and foam of 40 kg/m³ (makers give 35 to 45), to one decimal: engineering table
    /// G4.
    /// </summary>
    [Theory]
    [InlineData(50, 9.8)]
    [InlineData(60, 10.2)]
    [InlineData(80, 11.0)]
    [InlineData(100, 11.8)]
    [InlineData(120, 12.6)]
    public void A_lining_that_the_plan_does_not_name_is_a_panel(int thick, double perSquareMetre)
    {
        var layer = Assert.Single(Of($"walls {thick}"));

        Assert.Equal(perSquareMetre, layer.PerArea.Value, 0.05);
        Assert.Contains("not said", layer.Made);
        Assert.Contains(layer.PerArea.Inputs, i => i.Source is not null && i.Text.Contains("not said", StringComparison.Ordinal));
    }

    /// <summary>BS 648:1964 (secondary copy): screed 30 kg/m² for 13 mm, plywood 0.7 kg/m² for each mm.</summary>
    [Theory]
    [InlineData("falls work 2 % to fd1", 26, 60)]
    [InlineData("", 28, 19.6)]
    public void A_floor_with_falls_is_screed_and_one_without_is_plywood(string falls, int thick, double perSquareMetre) =>
        Assert.Equal(perSquareMetre, Assert.Single(Of($"floor {thick}", falls)).PerArea.Value, 0.01);

    /// <summary>
    /// BS 648:1964: plywood 0.7 kg/m² for each mm; a board of 12 mm and insulation of 40 kg/m³ are own assumptions: 8.4 + 1.52.
    /// </summary>
    [Fact]
    public void A_lining_that_the_plan_names_weighs_what_that_weighs()
    {
        var layer = Assert.Single(Of("walls 50 \"plywood, painted\""));

        Assert.Equal(9.92, layer.PerArea.Value, 0.001);
        Assert.DoesNotContain("not said", layer.Made);
        Assert.Contains(layer.PerArea.Inputs, i => i.Line is not null && i.Text.Contains("plywood, painted", StringComparison.Ordinal));
    }

    /// <summary>
    /// BS 648:1964 (secondary copy): concrete 2400 kg/m³, so that 100 mm of it weigh 240 kg/m²; a panel of 60 mm weighs 10.2 (G4).
    /// </summary>
    [Fact]
    public void Floor_and_ceiling_may_say_what_they_are_of()
    {
        var layers = Of("ceiling 60 \"panel\", floor 100 \"concrete slab\"");

        Assert.Equal(10.2, layers[0].PerArea.Value, 0.05);
        Assert.Equal(240, layers[1].PerArea.Value, 1e-6);
        Assert.All(layers, l => Assert.DoesNotContain("not said", l.Made));
    }

    /// <summary>Two words that no material has: the usual one is taken, and told.</summary>
    [Fact]
    public void A_material_that_is_not_known_is_told()
    {
        var layer = Assert.Single(Of("walls 50 \"moonstone\""));

        Assert.Contains("moonstone", layer.Made);
        Assert.Contains(layer.PerArea.Inputs, i => i.Text.Contains("moonstone is not known", StringComparison.Ordinal));
    }

    /// <summary>6000 outside, walls 50: a partition of 80 mm across 2100 mm, up to the ceiling; 11.01 kg/m² as in G4.</summary>
    [Fact]
    public void Partitions_weigh_by_their_own_length_and_height()
    {
        var plan = CheckedPlan.Plan("""
            plan "Two rooms"
              units metric
            shell trailer 6 m x 2.2 m x 2.4 m
              walls 50
            room a "A" dry from west to 3000
            room b "B" dry from 3000 to east
            partitions thickness 80
              height 2000
              build "sandwich panel"
            """);

        var layer = Assert.Single(CheckedPlan.Facts(plan).Layers);

        Assert.Equal(2.1 * 2.0, layer.Area.Value, 1e-9);
        Assert.Equal(2.1 * 2.0 * (7.85 + (0.079 * 40)), layer.Weight.Value, 1e-9);
        Assert.Equal(3000, layer.CentreX, 1e-6);
        Assert.DoesNotContain("not said", layer.Made);
    }

    private static IReadOnlyList<Layer> Of(string lining, string more = "") => CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Lined"
          units metric
        shell trailer 6 m x 2.2 m x 2.4 m
          walls 50
          lining {lining}
        room work "Work room" dirty from west to east
        drain fd1 floor in work, 1000 from west, centred, 100
        {more}
        """)).Layers;
}
