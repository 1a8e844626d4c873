using Floorplan.Sizing.Lifting;
using Xunit;

namespace Floorplan.Tests.Checks.Lifting;

/// <summary>
/// Worked examples of the Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110. Inputs and printed answers are
/// from memory except those of example 4, whose multipliers and limits were found; full-precision values were computed apart from this
/// code.
/// </summary>
public sealed class LiftingEquationTests
{
    public static TheoryData<string, double[], Coupling, double, double, double, double> Examples => new()
    {
        { "1 punch press, origin", [44, 23, 15, 49, 0, 0.2, 15], Coupling.Fair, 16.3, 2.7, 16.017, 2.747 },
        { "1 punch press, destination", [44, 23, 64, 49, 0, 0.2, 15], Coupling.Fair, 14.5, 3.0, 14.153, 3.109 },
        { "2 supply rolls, origin", [35, 20, 27, 17, 0, 0.2, 27], Coupling.Poor, 20.9, 1.7, 20.771, 1.685 },
        { "2 supply rolls, destination", [35, 20, 10, 17, 0, 0.2, 27], Coupling.Poor, 18.1, 1.9, 18.062, 1.938 },
        { "3 bags into hopper, origin", [40, 18, 15, 21, 45, 0.2, 15], Coupling.Fair, 18.9, 2.1, 18.521, 2.160 },
        { "4 package inspection, origin", [26, 10, 22, 37, 0, 3, 22], Coupling.Fair, 34.9, 0.7, 34.814, 0.747 },
        { "4 package inspection, destination", [26, 20, 59, 37, 0, 3, 22], Coupling.Fair, 15.2, 1.7, 15.253, 1.705 },
        { "5 dishwasher, origin", [20, 20, 44, 37, 30, 5, 44], Coupling.Good, 14.4, 1.4, 14.337, 1.395 },
        { "5 dishwasher, destination", [20, 20, 7, 37, 30, 5, 44], Coupling.Good, 13.3, 1.5, 13.256, 1.509 },
    };

    [Theory]
    [MemberData(nameof(Examples))]
    public void It_gives_what_the_manual_prints_and_what_full_precision_gives(
        string name, double[] of, Coupling coupling, double printedLimit, double printedIndex, double limit, double index)
    {
        var lift = new Lift(of[0], of[1], of[2], of[3], of[4], of[5], LiftingDuration.Short, coupling) { OriginIn = of[6] };

        Assert.Equal(printedLimit, LiftingEquation.PrintedRecommendedLb(lift), 0.051);
        Assert.Equal(printedIndex, Math.Round(of[0] / LiftingEquation.PrintedRecommendedLb(lift), 1), 0.051);
        Assert.Equal(limit, LiftingEquation.RecommendedLb(lift), 0.001);
        Assert.Equal(index, LiftingEquation.Index(lift), 0.001);
        Assert.NotEmpty(name);
    }

    /// <summary>Manual, example 6, product packaging I: eight hours a day, twisted by a right angle; from memory.</summary>
    [Fact]
    public void It_gives_what_the_manual_prints_for_a_whole_day()
    {
        var lift = new Lift(25, 14, 24, 16, 90, 1, LiftingDuration.Long, Coupling.Fair);

        Assert.Equal(16.4, LiftingEquation.PrintedRecommendedLb(lift), 0.001);
        Assert.Equal(1.5, Math.Round(25 / LiftingEquation.PrintedRecommendedLb(lift), 1));
        Assert.Equal(16.457, LiftingEquation.RecommendedLb(lift), 0.001);
        Assert.Equal(1.519, LiftingEquation.Index(lift), 0.001);
    }

    /// <summary>
    /// A worked example in metric, found at homeworksource.com/p/1089113: 12 kg, H 25, V 55, D 95 cm, no twist, 3 a minute for 45 minutes,
    /// fair hold; limit 15.7 kg, index 0.76. The two systems of the manual are no exact conversions of each other: within 0.1 kg.
    /// </summary>
    [Fact]
    public void It_gives_what_a_metric_example_prints()
    {
        const double cm = 1 / 2.54, kg = 1 / 0.45359237;
        var lift = new Lift(12 * kg, 25 * cm, 55 * cm, 95 * cm, 0, 3, LiftingDuration.Short, Coupling.Fair);

        Assert.Equal(15.7, LiftingEquation.RecommendedLb(lift) / kg, 0.1);
        Assert.Equal(0.76, LiftingEquation.Index(lift), 0.005);
    }

    /// <summary>Manual, example 7: between the rows the multiplier lies on a straight line.</summary>
    [Fact]
    public void Between_rows_the_frequency_multiplier_is_interpolated()
    {
        var five = new Lift(10, 10, 30, 10, 0, 5 + (1 / 3.0), LiftingDuration.Short, Coupling.Good);

        Assert.Equal(0.7833, LiftingEquation.RecommendedLb(five) / 51, 0.0001);
    }

    [Theory]
    [InlineData(26, 30, 10, 0, 1)]
    [InlineData(10, 71, 10, 0, 1)]
    [InlineData(10, 30, 71, 0, 1)]
    [InlineData(10, 30, 10, 136, 1)]
    [InlineData(10, 30, 10, 0, 15.1)]
    public void Past_its_bounds_nothing_may_be_lifted(double h, double v, double d, double a, double f)
    {
        Assert.Equal(0, LiftingEquation.RecommendedLb(new Lift(10, h, v, d, a, f, LiftingDuration.Short, Coupling.Good)));
    }
}
