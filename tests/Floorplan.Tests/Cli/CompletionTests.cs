using Floorplan.Checks.Framework;
using Floorplan.Cli.Output.RulePages;
using Floorplan.Drawing.Sheets;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>
/// What a shell is offered behind a Tab; README says how to switch it on. Words that hold what was begun somewhere else are
/// offered too, so the shell keeps those that start with it, as README's function does.
/// </summary>
public class CompletionTests
{
    [Theory]
    [InlineData("ex", "explain")]
    [InlineData("new fi", "fish-20ft")]
    [InlineData("explain ov", "overlap")]
    [InlineData("explain comma", "comma-in-number")]
    [InlineData("check a.unit --output js", "json")]
    [InlineData("draw a.unit --she", "--sheets")]
    [InlineData("format --st", "--stdout")]
    public void The_word_that_was_begun_is_ended(string line, string word)
        => Assert.Equal([word], Offered(line).Where(w => w.StartsWith(line.Split(' ')[^1], StringComparison.Ordinal)));

    [Fact]
    public void Every_command_for_people_is_offered_and_the_rest_is_not()
    {
        Assert.Superset(
            new HashSet<string> { "new", "check", "draw", "explain", "rules", "format", "--help", "--version" }, Offered("").ToHashSet());
        Assert.DoesNotContain("gallery", Offered(""));
    }

    [Fact]
    public void Every_rule_and_every_code_is_offered_to_explain()
        => Assert.Superset(
            RuleCatalogue.All.Select(r => r.Name).Concat(DiagnosticPages.All.Select(p => p.Code)).ToHashSet(),
            Offered("explain ").ToHashSet());

    [Fact]
    public void Every_sheet_is_offered_to_draw()
        => Assert.Superset(SheetSet.All.Select(s => $"{s.Number}").ToHashSet(), Offered("draw a.unit --sheets ").ToHashSet());

    [Fact]
    public void Files_are_left_to_the_shell() => Assert.DoesNotContain(Offered("check a"), w => !w.StartsWith('-'));

    private static string[] Offered(string line)
        => CliRun.Of($"[suggest:{line.Length}]", line).Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
