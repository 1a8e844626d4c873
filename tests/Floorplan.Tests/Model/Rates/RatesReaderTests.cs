using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Xunit;

namespace Floorplan.Tests.Model.Rates;

public sealed class RatesReaderTests
{
    [Fact]
    public void Rates_are_read_with_their_line()
    {
        var rates = Bind("what, unit, low, high\ncurrency, EUR, ,\n\n\"wall lining\", m2, 40, 60.5\n").Plan!.Head.Rates!;

        var row = Assert.Single(rates.Rows);
        Assert.Equal(("wall lining", "m2", 40, 60.5), (row.What, row.Unit, row.Low, row.High));
        Assert.Equal((4, "our rates.csv"), (row.Span.Position.Line, row.Span.Source.Path));
        Assert.Equal("EUR", rates.Currency);
    }

    [Fact]
    public void One_rate_is_both_low_and_high()
    {
        var row = Assert.Single(Bind("What,Unit,Rate\nwater,m3,2.5\n").Plan!.Head.Rates!.Rows);

        Assert.Equal((2.5, 2.5), (row.Low, row.High));
    }

    /// <summary>Spreadsheets of many countries part columns by semicolons.</summary>
    [Fact]
    public void Semicolons_part_columns_too()
        => Assert.Equal("water", Assert.Single(Bind("what;unit;low;high\nwater;m3;2;3\n").Plan!.Head.Rates!.Rows).What);

    [Theory]
    [InlineData("water, m3, dear, 3", "rates-row", 3)]
    [InlineData("water, m3, -2, 3", "rates-row", 3)]
    [InlineData("water, m3, 1e400, 3", "rates-row", 3)]
    [InlineData("water, m3, NaN, 3", "rates-row", 3)]
    [InlineData("water, m3, 4, 3", "rates-row", 3)]
    [InlineData("water, m3", "rates-row", 3)]
    [InlineData(", m3, 2, 3", "rates-row", 3)]
    [InlineData("ice, kg, 1, 2", "rates-twice", 3)]
    public void A_wrong_line_is_told_and_the_others_are_kept(string wrong, string code, int line)
    {
        var bound = Bind($"what, unit, low, high\nice, kg, 1, 2\n{wrong}\npower, kWh, 0.2, 0.3\n");

        var mistake = Assert.Single(bound.Diagnostics);
        Assert.Equal((Severity.Error, code, line), (mistake.Severity, mistake.Code, mistake.Span.Position.Line));
        Assert.Equal("our rates.csv", mistake.Span.Source.Path);
        Assert.NotNull(mistake.Help);
        Assert.Equal(["ice", "power"], bound.Plan!.Head.Rates!.Rows.Select(r => r.What));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n\n")]
    [InlineData("water, m3, 2, 3\n")]
    [InlineData("what, unit\nwater, m3\n")]
    public void A_table_without_its_head_is_told(string text) => Assert.Equal("rates-head", Assert.Single(Bind(text).Diagnostics).Code);

    [Theory]
    [InlineData("../rates.csv")]
    [InlineData("/etc/rates.csv")]
    [InlineData("our rats.csv")]
    [InlineData("our rates.txt")]
    [InlineData("our rates")]
    public void Only_a_table_beside_the_plan_is_opened(string name)
    {
        var mistake = Assert.Single(Bind("what, unit, rate\n", name).Diagnostics);

        Assert.Equal("rates-not-read", mistake.Code);
        Assert.Equal("test.unit", mistake.Span.Source.Path);
        Assert.NotNull(mistake.Help);
    }

    [Fact]
    public void A_near_name_is_offered()
        => Assert.Contains("our rates.csv", Assert.Single(Bind("what, unit, rate\n", "our rats.csv").Diagnostics).Help);

    /// <summary>Bytes that a stranger may put there: no crash, no hang, and the plan stands.</summary>
    [Theory]
    [InlineData("what, unit, low, high\n\"water, m3, 2, 3\nice, kg, 1, 2\n")]
    [InlineData("what, unit, low, high\n\"\"\"\"\"\"\"\n")]
    [InlineData("what, unit, low, high\n\u0000\u0001,\u0002,3,4\n")]
    [InlineData("what, unit, low, high\n=cmd|' /C calc'!A0, each, 1, 2\n")]
    public void Hostile_text_leaves_the_plan_alone(string text) => Assert.NotNull(Bind(text).Plan);

    [Fact]
    public void A_table_far_too_long_is_refused()
        => Assert.Equal("rates-not-read", Assert.Single(Bind("what, unit, rate\n" + new string('#', 300_000)).Diagnostics).Code);

    [Fact]
    public void More_lines_than_the_bound_are_told_once()
    {
        string lines = string.Concat(Enumerable.Range(0, 3000).Select(i => $"thing {i}, each, 1\n"));

        var bound = Bind("what, unit, rate\n" + lines);

        Assert.Single(bound.Diagnostics);
        Assert.Equal(1000, bound.Plan!.Head.Rates!.Rows.Count);
    }

    private static BoundPlan Bind(string table, string name = "our rates.csv") => PlanBinder.Bind(
        SyntaxTree.Parse(new SourceText($"""
            plan "Box"
              units metric
              rates "{name}"
            shell container 20 ft standard
              doors west
            room work "Work room" dry from west to east
            """, "test.unit")),
        new MemoryFiles(new Dictionary<string, string> { ["our rates.csv"] = table }));
}
