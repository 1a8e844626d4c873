using Floorplan.Cli.Input;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>A whole check ends within its steps or refuses the plan, and says so.</summary>
public class WorkCeilingTests
{
    [Fact]
    public void A_plan_that_takes_more_is_refused_at_its_first_line_with_the_bound_and_a_way_out()
    {
        var examination = Examination.Of(new SourceText(Plans.Good, "a.unit"), new NoFiles(), work: 50_000);
        Assert.Null(examination.Plan);
        Assert.True(examination.HasErrors);
        var mistake = Assert.Single(examination.Diagnostics);
        Assert.Equal("too-much-work", mistake.Code);
        Assert.Equal((1, Plans.Good.Split('\n')[0]), (mistake.Span.Position.Line, mistake.Span.Value));
        Assert.Contains($"{PlanBounds.MostMillionSteps} million", mistake.Message);
        Assert.Contains("split the plan", mistake.Help);
    }

    /// <summary>A hundredth, so that a plan of many times its size is checked too.</summary>
    [Fact]
    public void A_real_unit_takes_a_small_part_of_the_steps()
    {
        foreach (string template in Plans.Templates)
        {
            var source = new SourceText(File.ReadAllText(template), "a.unit");
            Assert.NotNull(Examination.Of(source, new NoFiles(), work: PlanBounds.MostMillionSteps * 10_000L).Plan);
        }
    }

    [Fact]
    public void What_is_broken_off_inside_does_not_end_what_is_around_it_and_the_other_way_round_it_does()
    {
        bool after = false;
        Assert.True(Steps.Within(1_000, () =>
        {
            Assert.False(Steps.Within(10, () => Steps.Take(11)));
            after = true;
        }));
        Assert.True(after);

        Assert.False(Steps.Within(10, () =>
        {
            Steps.Within(1_000, () => Steps.Beside(11));
            Assert.Fail("it goes on");
        }));
        Steps.Take(1_000_000);
    }
}
