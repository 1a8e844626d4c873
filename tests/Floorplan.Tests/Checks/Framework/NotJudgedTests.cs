using Floorplan.Checks.Framework;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Cli;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

/// <summary>What a check did not look at is told, in one wording everywhere.</summary>
public sealed class NotJudgedTests
{
    private const string Sketch = """
        plan "Sketch"
          units metric
          code eu
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        """;

    [Fact]
    public void A_sketch_is_told_what_it_lacks()
    {
        var plan = CheckedPlan.Plan(Sketch);
        var judged = NotJudged.Of(plan, CheckedPlan.Check(plan));

        Assert.Contains(("hose-misses-floor", "no hoses"), judged.Missing);
        Assert.Contains(("falls-behind", "no day with work times"), judged.Missing);
        Assert.Contains(("drain-too-few", "no drains"), judged.Missing);
        Assert.Contains(("one-exit-only", "no figure for this place and trade"), judged.Missing);
        Assert.DoesNotContain(judged.Missing, m => m.Rule is "overlap" or "hitch-load" or "unused");
        Assert.StartsWith(
            $"{judged.Rules - judged.Missing.Count} of {judged.Rules} rules had something to look at; not judged: ", judged.Text);
    }

    [Fact]
    public void Every_name_that_it_may_tell_is_a_rule()
    {
        var plan = CheckedPlan.Plan(Sketch);
        Assert.All(NotJudged.Of(plan, []).Missing, m => Assert.NotNull(RuleCatalogue.Find(m.Rule)));
    }

    /// <summary>A rule that finds something in its own example has something to look at.</summary>
    [Fact]
    public void No_example_is_said_not_to_be_judged() => Assert.All(
        RuleCatalogue.All.Where(r => r.Group != RuleGroup.File),
        rule => Assert.DoesNotContain(
            NotJudged.Of(CheckedPlan.Plan(rule.Bad), []).Missing, m => m.Rule == rule.Name));

    [Theory]
    [InlineData("code eu", "`country` and `trade`")]
    [InlineData("code us, trade fish", "`country` and `plant`")]
    [InlineData("code none", "`trade`")]
    public void What_the_head_leaves_open_is_told_once(string head, string open)
        => Assert.Contains(open, NotJudged.NotChosen(CheckedPlan.Plan(Sketch.With(head)).Head));

    [Fact]
    public void A_head_that_says_all_leaves_nothing_open()
        => Assert.Null(NotJudged.NotChosen(CheckedPlan.Plan(Sketch.With("country de, trade bakery")).Head));

    [Fact]
    public void Console_report_and_sheet_9_say_the_same()
    {
        string text = File.ReadAllText(Repository.At("templates", "fish-20ft.unit"));
        var plan = CheckedPlan.Plan(text);
        string said = NotJudged.Of(plan, CheckedPlan.Check(plan)).Text;

        Assert.Contains(Bare(said), Bare(CliRun.WithInput(text, "check", "-").Out));
        Assert.Contains(Bare(said), Bare(CliRun.WithInput(text, "check", "-", "--output", "markdown").Out));
        Assert.Contains(Bare(said), Bare(string.Concat(DrawnPlans.Draw(text, [9]).Texts().Select(t => t.Text))));
    }

    /// <summary>Lines are broken where there is room, and Markdown escapes marks.</summary>
    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c is not ('\\' or '`')));
}
