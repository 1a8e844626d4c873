using Floorplan.Checks.Framework;
using Floorplan.Checks.Mending;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Checks.Mending;

/// <summary>The search for small changes ends by the work that it did, however heavy one check of the plan is.</summary>
public sealed class MendingWorkTests
{
    /// <summary>The change that it is at when the work is used up is still looked at to its end.</summary>
    private const long OneCheck = 6_000_000;

    [Theory]
    [InlineData("swapped")]
    [InlineData("heaped")]
    public void It_ends_near_the_work_allowed_and_says_that_more_is_not_tried(string which)
    {
        var plan = Bind(which == "swapped" ? Swapped : Heaped);
        var findings = Checker.Check(new PlanFacts(plan, new FloorSpace(plan)));
        long before = Steps.Taken;

        var proposals = new Mender(new NoFiles()).Propose(plan, findings);

        Assert.InRange(Steps.Taken - before, 1, Mender.Proposing + OneCheck);
        Assert.False(proposals.IsAll);
        Assert.True(proposals.Tried > 5, $"only {proposals.Tried}");
        Assert.Equal(findings.Count, proposals.Findings.Count);
    }

    [Fact]
    public void Nothing_is_tried_in_a_text_that_takes_longer_to_read_than_the_work_allowed()
    {
        var plan = Bind(Swapped + new string('#', 1_200_000));
        var findings = Checker.Check(new PlanFacts(plan, new FloorSpace(plan)));
        long before = Steps.Taken;

        var proposals = new Mender(new NoFiles()).Propose(plan, findings);

        Assert.Equal((0, 0, false), (Steps.Taken - before, proposals.Tried, proposals.IsAll));
    }

    [Fact]
    public void It_tries_the_same_changes_each_time()
    {
        var plan = Bind(Swapped);
        var findings = Checker.Check(new PlanFacts(plan, new FloorSpace(plan)));

        var first = new Mender(new NoFiles()).Propose(plan, findings);
        var second = new Mender(new NoFiles()).Propose(plan, findings);

        Assert.Equal((first.Tried, first.IsAll), (second.Tried, second.IsAll));
        Assert.Equal(first.Findings.Select(f => f.Proposal), second.Findings.Select(f => f.Proposal));
    }

    [Fact]
    public void One_finding_that_nothing_mends_leaves_work_for_the_others()
    {
        // Things stand in each other's way, which no small change mends; the door only lacks words.
        string both = Swapped.Replace(
            "36 in x 78 in, swings out, closes itself, opens from inside", "36 in x 78 in, swings out, closes itself",
            StringComparison.Ordinal);
        var plan = Bind(both);

        var proposals = new Mender(new NoFiles()).Propose(plan, Checker.Check(new PlanFacts(plan, new FloorSpace(plan))));

        Assert.NotEqual(Swapped, both);
        Assert.Contains(proposals.Findings, f => f is { Rule: "exit-locks-in", Proposal: not null });
    }

    /// <summary>The poultry template with the sizes of the chill tank and the packing table changed over.</summary>
    private static string Swapped => File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"))
        .Replace("56 in x 26 in x 34 in", "chill", StringComparison.Ordinal)
        .Replace("38 in x 24 in x 36 in", "56 in x 26 in x 34 in", StringComparison.Ordinal)
        .Replace("chill\n  place", "38 in x 24 in x 36 in\n  place", StringComparison.Ordinal);

    private static string Heaped => """
        plan "Heap"
          units metric
        shell container 40 ft high-cube
          doors west
        room work "Work" clean from west to east
        door d1 work to outside, south wall, 500 from west, 900 x 2000, swings out

        """ + string.Concat(Enumerable.Range(0, 60).Select(i => $"""
        station b{i} "Bench {i}" in work, 1000 x 600 x 900, against north wall, {3000 + (13 * i)} from west, worker south

        """));

    private static Plan Bind(string text) => PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, "test.unit")), new NoFiles()).Plan!;
}
