using Floorplan.Sizing;
using Floorplan.Sizing.Ground;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Ground;

public sealed class GroundSizesTests
{
    /// <summary>D10: 1856 kg on 71.8 kPa (24 CFR 3285.202: 1500 lb/sq ft) need 0.254 m².</summary>
    [Fact]
    public void The_area_under_a_corner_is_that_of_the_worked_example()
        => Assert.Equal(0.254, CornerBlocks.AreaOf(1856, 71_820), 0.001);

    /// <summary>D8, from the plan to the figure: an unlined 20 ft box of 2300 kg in wind of 24 m/s.</summary>
    [Fact]
    public void A_plan_with_wind_has_the_figures_of_the_worked_example()
    {
        var figures = Figures("code eu", "wind 24 m/s");

        Assert.Equal(561.7, figures["pressure of the wind"].Value, 0.1);
        Assert.Equal(11_460, figures["push of the wind on the long side"].Value, 10.0);
        Assert.Equal(1.85, figures["weight against wind, overturning"].Value, 0.005);
        Assert.Equal(32.7, figures["wind that it falls over in"].Value, 0.1);
    }

    /// <summary>S3: 115 mph by ASCE 7 are 1170 Pa.</summary>
    [Fact]
    public void An_american_plan_counts_in_gusts()
        => Assert.Equal(1170, Figures("code us", "wind 115 mph")["pressure of the wind"].Value, 5.0);

    [Theory]
    [InlineData("eu", "wind 26 m/s")]
    [InlineData("us", "wind 115 mph")]
    public void Without_wind_the_plan_is_told_what_to_write(string code, string write)
    {
        var subject = Facts("code " + code, "").GroundSizes!;

        Assert.Equal(write, Assert.Single(subject.Missing).Write);
        Assert.Empty(CheckedPlan.Bind(Text("code " + code, write)).Diagnostics);
        Assert.Contains(subject.Rows, r => r.What == "block");
    }

    [Theory]
    [InlineData(5, 10)]
    [InlineData(24, 25)]
    [InlineData(40, 80)]
    public void More_wind_never_needs_less_to_hold_the_box(int less, int more)
    {
        foreach (string name in new[] { "tie-downs of the windward side", "hold against sliding", "friction that it needs" })
        {
            Assert.True(Figures("code eu", $"wind {more} m/s")[name].Value >= Figures("code eu", $"wind {less} m/s")[name].Value);
        }
    }

    /// <summary>No wind at all, and the most that the language takes.</summary>
    [Theory]
    [InlineData("wind 0 m/s")]
    [InlineData("wind 100 m/s")]
    [InlineData("wind 0.000001 m/s")]
    public void Any_wind_gives_figures_that_are_numbers(string wind)
        => Assert.All(Facts("code eu", wind).GroundSizes!.Figures, f => Assert.True(double.IsFinite(f.Value), f.ToString()));

    private static Dictionary<string, Figure> Figures(string code, string wind)
        => Facts(code, wind).GroundSizes!.Figures.ToDictionary(f => f.Name);

    private static PlanFacts Facts(string code, string wind) => CheckedPlan.Facts(CheckedPlan.Plan(Text(code, wind)));

    private static string Text(string code, string wind) => $"""
        plan "Box"
          units metric
          {code}
          {wind}
        shell container 20 ft standard
          doors west
        room work "Work room" dry from west to east
        """;
}
