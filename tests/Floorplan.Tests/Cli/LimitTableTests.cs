using Floorplan.Checks.Framework;
using Floorplan.Cli.Output.RulePages;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing.Working;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The table of all figures that whoever audits them reads.</summary>
public sealed class LimitTableTests
{
    private static readonly string[] Rows =
        [.. LimitTable.Markdown().Split('\n').Where(l => l.StartsWith("| [`", StringComparison.Ordinal))];

    [Fact]
    public void Every_figure_has_a_row_with_all_its_columns()
    {
        Assert.Equal(RuleCatalogue.All.Sum(r => r.Limits.Count), Rows.Length);
        Assert.All(Rows, r => Assert.Equal(12, r.Trim('|', ' ').Split(" | ").Length));
    }

    [Fact]
    public void A_row_says_place_trade_kind_clause_edition_and_how_it_was_read()
        => Assert.Contains(
            Rows, r => r.Contains("hand-sink-too-far", StringComparison.Ordinal)
                && r.Contains("| za | red meat, poultry | any | any | law |", StringComparison.Ordinal)
                && r.EndsWith("| 2004, 2006, 2000 | read in a public copy |", StringComparison.Ordinal));

    [Fact]
    public void No_figure_from_memory_is_an_error_and_no_guidance_warns() => Assert.All(
        RuleCatalogue.All.SelectMany(r => r.Limits),
        l =>
        {
            Assert.False(l.Source.Confirmed is Origin.FromMemory or Origin.FromMemoryToVerify && LimitFigure.Weight(l) == Severity.Error);
            Assert.False(l.Source.Force == Force.Guidance && LimitFigure.Weight(l) > Severity.Note);
        });
}
