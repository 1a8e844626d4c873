using Floorplan.Language.Diagnostics;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Guide;

public class FirstPlanTests
{
    [Fact]
    public void The_ten_lines_that_the_guide_opens_with_are_a_whole_plan()
    {
        string guide = Sample.Read("templates/README.md").ReplaceLineEndings("\n");
        int start = guide.IndexOf("```unit\n", StringComparison.Ordinal) + "```unit\n".Length;
        string text = guide[start..guide.IndexOf("```", start, StringComparison.Ordinal)];
        var bound = PlanBinder.Bind(Sample.Parse(text), new NoFiles());
        Assert.Equal(10, text.TrimEnd().Split('\n').Length);
        Assert.DoesNotContain(bound.Diagnostics, d => d.Severity == Severity.Error);
        Assert.NotNull(bound.Plan);
    }
}
