using Floorplan.Checks.Framework;
using Xunit;

namespace Floorplan.Tests.Cli;

public class ExplainCommandTests
{
    [Fact]
    public void Every_rule_has_a_page_with_its_reason_source_limits_and_examples()
    {
        foreach (var rule in RuleCatalogue.All)
        {
            var run = CliRun.Of("explain", rule.Name);
            Assert.Equal(0, run.Exit);
            Assert.StartsWith(rule.Name + "\n", run.Out);
            Assert.Contains("\nWhy it matters\n" + rule.Why + "\n", run.Out);
            Assert.All(rule.Sources, s => Assert.Contains(s.Text, run.Out));
            Assert.All(rule.Limits, l => Assert.Contains($"\n{l.Key}: ", run.Out));
            Assert.Contains("\nWith the fault\n", run.Out);
            Assert.Contains("\nMended by these lines\n", run.Out);
        }
    }

    [Fact]
    public void An_unknown_name_offers_near_ones()
    {
        var run = CliRun.Of("explain", "over-lap");
        Assert.Equal(2, run.Exit);
        Assert.Equal("floorplan: there is nothing called over-lap to explain; did you mean `overlap`?\n", run.Error);
        Assert.Contains("did you mean `unknown-name`", CliRun.Of("explain", "unknwon-name").Error);
        Assert.Contains("floorplan rules lists the rules", CliRun.Of("explain", "x").Error);
    }

    [Fact]
    public void A_mistake_in_the_text_is_explained_with_a_wrong_and_a_right_example()
    {
        var run = CliRun.Of("explain", "[comma-in-number]");
        Assert.Equal(0, run.Exit);
        Assert.Equal("""
            comma-in-number

            What it means
            Commas part details, so they do not stand inside numbers. A decimal has a point.

            Wrong
              station bench "Bench" in prep
                size 1,200 x 600

            Right
              station bench "Bench" in prep
                size 1200 x 600

            """.ReplaceLineEndings("\n"), run.Out);
    }

    [Fact]
    public void Rules_lists_every_rule_once_under_its_group()
    {
        var run = CliRun.Of("rules");
        Assert.Equal(0, run.Exit);
        Assert.All(RuleCatalogue.All, r => Assert.Single(run.Out.Split('\n'), l => l.StartsWith($"  {r.Name} ", StringComparison.Ordinal)));
        Assert.Contains("Getting out\n", run.Out);
    }
}
