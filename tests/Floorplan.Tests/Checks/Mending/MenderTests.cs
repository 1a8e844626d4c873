using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Mending;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Mending;

/// <summary>What <c>check --mend</c> writes: a small change that mends a finding, and nothing else.</summary>
public sealed class MenderTests
{
    private static string Poultry => File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"));

    [Fact]
    public void A_door_in_a_post_is_moved_just_clear_of_it()
    {
        var made =
            Mend(Poultry.Replace(
                "south wall, 12 in from east, 36 in x 78 in", "south wall, 0 in from east, 36 in x 78 in", StringComparison.Ordinal));

        var finding = Assert.Single(made);
        Assert.Equal("cuts-frame", finding.Rule);
        Assert.Contains("6 in from east", finding.Proposal!.After);
    }

    [Fact]
    public void A_cold_store_door_gets_its_inside_release()
    {
        string broken =
            Poultry.Replace(
                "36 in x 78 in, swings out, closes itself, opens from inside", "36 in x 78 in, swings out, closes itself",
                StringComparison.Ordinal);

        var proposal = Assert.Single(Mend(broken)).Proposal!;

        Assert.NotEqual(Poultry, broken);
        Assert.StartsWith("door  d5", proposal.Before, StringComparison.Ordinal);
        Assert.Equal(proposal.Before + ", opens from inside", proposal.After);
    }

    [Fact]
    public void A_drain_that_is_missing_is_added_at_the_end()
    {
        string[] lines =
            [.. Poultry.Split('\n')
                .Where(l => !l.StartsWith("drain fd2", StringComparison.Ordinal) && !l.StartsWith("falls evis", StringComparison.Ordinal))];
        string broken = string.Join('\n', lines);

        string mended = Assert.Single(Mend(broken)).Proposal!.Text;

        Assert.StartsWith(broken, mended, StringComparison.Ordinal);
        Assert.StartsWith("drain fd-evis floor in evis, ", mended[broken.Length..].Trim('\n'), StringComparison.Ordinal);
    }

    [Fact]
    public void Comments_and_layout_stay_and_only_the_moved_number_changes()
    {
        string broken = Poultry.Replace(
            "door  d5 holding to outside,  south wall, 12 in from east, 36 in x 78 in, swings out, closes itself, opens from inside",
            "door  d5 holding to outside,  south wall,   0 in from east,\t36 in x 78 in, swings out, closes itself, opens from inside   "
                + "# the van stops here",
            StringComparison.Ordinal);

        string mended = Assert.Single(Mend(broken)).Proposal!.Text;

        Assert.Equal(broken.Replace("  0 in from east,\t", "  6 in from east,\t", StringComparison.Ordinal), mended);
    }

    [Fact]
    public void A_gap_below_nothing_is_opened_until_the_things_stand_side_by_side()
    {
        string broken = Poultry.Replace("east of s3 gap 4 in", "east of s3 gap -4 in", StringComparison.Ordinal);

        var finding = Assert.Single(Mend(broken));

        Assert.Equal("overlap", finding.Rule);
        Assert.Contains("gap 0 in", finding.Proposal!.After);
    }

    [Fact]
    public void An_accepted_finding_is_left_alone()
    {
        string accepted =
            Poultry.Replace(
                "36 in x 78 in, swings out, closes itself, opens from inside", "36 in x 78 in, swings out, closes itself",
                StringComparison.Ordinal)
            + "\naccept exit-locks-in at d5 \"a watchman sits outside\"\n";

        Assert.Empty(Mend(accepted));
    }

    public static TheoryData<string> Rules => [.. RuleCatalogue.All.Select(r => r.Name)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void No_change_makes_another_finding_or_one_worse(string rule)
    {
        string text = RuleCatalogue.Find(rule)!.Bad;
        foreach (var mended in Mend(text))
        {
            var before = CheckedPlan.Check(text).ToLookup(Key);
            var after = CheckedPlan.Check(mended.Proposal!.Text);
            Assert.DoesNotContain(after, f => Key(f) == Key(mended));
            Assert.All(after, f => Assert.Contains(before[Key(f)], b => b.Severity >= f.Severity));
            text = mended.Proposal!.Text;
        }
    }

    [Fact]
    public void Many_faults_are_within_reach_of_a_small_change()
    {
        int mended = RuleCatalogue.All.Count(r => Mend(r.Bad).Any(f => f.Rule == r.Name));
        Assert.True(mended >= 8, $"only {mended}");
    }

    private static IReadOnlyList<Finding> Mend(string text) => new Mender(new NoFiles()).Mend(new SourceText(text, "test.unit"));

    private static string Key(Finding finding) => finding.Rule + ' ' + string.Join(' ', finding.Things.Order(StringComparer.Ordinal));
}
