using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Sizing.Cost;
using Floorplan.Sizing.Cost.Lists;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Checks.Support;
using Xunit;
using Range = Floorplan.Sizing.Cost.Range;

namespace Floorplan.Tests.Sizing.Cost;

public sealed class MoneySizesTests
{
    private const string Rates = """
        what, unit, low, high
        currency, crowns, ,
        # to build
        shell, each, 2000, 3000
        door, each, 400, 600
        build hours, h, 100, 100
        build labour, h, 20, 30
        labour, h, 15, 15
        packaging, each, 0.1, 0.2
        fish, each, 4, 5
        days, year, 200, 200
        rent, year, 1000, 1000
        interest, %, 8, 8
        life, years, 10, 10
        """;

    /// <summary>
    /// By hand from <see cref="Rates"/>: a box, one door and 100 h of work; a bench of "400 to 600": 2000 + 400 + 400 + 2000 = 4800 to
    /// 3000 + 600 + 600 + 3000 = 7200.
    /// </summary>
    [Fact]
    public void What_building_costs_is_rates_times_quantities()
    {
        var subject = Subject(Rates);

        var built = subject.Rows.Single(r => r.What == "to build");
        Assert.Equal("4800 to 7200 crowns", built.Value);
        Assert.Equal(7200, built.Figure!.Value, 1e-6);
    }

    /// <summary>By hand: 100 fish sell for 400 to 500, packaging is 10 to 20, the crew's hours are those of the day's frame.</summary>
    [Fact]
    public void Surplus_payback_and_break_even_follow_by_hand()
    {
        var subject = Subject(Rates);
        var figures = subject.Figures.ToDictionary(f => (f.Name, f.Of));
        double hours = figures[("hours of the crew a day", Figure.WholePlan)].Value / 3600;
        double crew = hours * 15;

        Assert.Equal((200 * (500 - crew - 10)) - 1000, figures[("surplus of a year", Figure.WholePlan)].Value, 1e-6);
        Assert.Equal(7200 / ((200 * (400 - crew - 20)) - 1000), figures[("payback", Figure.WholePlan)].Value, 1e-9);
        Assert.Equal(Math.Ceiling((crew + 5) / (4 - 0.2)), figures[("break-even", Figure.WholePlan)].Value, 1e-9);
        Assert.Equal(
            Worth.Present(4800, (200 * (500 - crew - 10)) - 1000, 0.08, 10),
            figures[("net present value", Figure.WholePlan)].Value, 1e-6);
    }

    /// <summary>The width of a price of 4 to 5 for 100 fish on 200 days is 20 000: nothing else moves as much.</summary>
    [Fact]
    public void What_matters_most_stands_first()
    {
        var table = Subject(Rates).Tables.Single(t => t.Title.StartsWith("What matters", StringComparison.Ordinal));

        Assert.Equal("fish", table.Rows[0][0]);
        Assert.Equal("20000 crowns", table.Rows[0][5]);
        Assert.DoesNotContain(table.Rows, r => r[0] == "rent");
        Assert.All(table.Rows, r => Assert.Equal(table.Heads.Count, r.Count));
    }

    [Fact]
    public void Without_rates_the_quantities_are_listed()
    {
        var subject = Subject(null);

        Assert.Contains(subject.Missing, m => m is { What: "rates", Write: "rates \"our rates.csv\"" });
        var quantities = subject.Tables.Single(t => t.Title == "Quantities and rates");
        Assert.Contains(quantities.Rows, r => r is ["door", "1", "not said", "each", ""]);
        Assert.Contains(quantities.Rows, r => r[0] == "frame steel");
    }

    [Fact]
    public void What_has_no_rate_is_told_with_a_line_to_write()
    {
        var missing = Subject("what, unit, rate\ndoor, each, 500\n").Missing;

        Assert.Contains(missing, m => m.What.StartsWith("rates of shell, frame steel", StringComparison.Ordinal)
            && m.Write == "shell, each, 10, 15");
    }

    [Fact]
    public void A_rate_that_nothing_uses_is_told()
    {
        var missing = Subject("what, unit, rate\ndoors, each, 500\n").Missing;

        Assert.Contains(missing, m => m.What.Contains("doors per each", StringComparison.Ordinal) && m.Write == "door, each, 10, 15");
    }

    /// <summary>Dearer never costs less, at either end.</summary>
    [Theory]
    [InlineData("door, each, 400, 600", "door, each, 500, 900")]
    [InlineData("build labour, h, 20, 30", "build labour, h, 20, 31")]
    [InlineData("labour, h, 15, 15", "labour, h, 15, 25")]
    public void Dearer_never_leaves_more(string cheap, string dear)
    {
        double Present(string rates) => Subject(rates).Figures.Single(f => f.Name == "net present value").Value;
        double Build(string rates) => Subject(rates).Figures.Single(f => f.Name == "cost to build").Value;
        string dearer = Rates.Replace("\n" + cheap, "\n" + dear, StringComparison.Ordinal);

        Assert.NotEqual(Rates, dearer);
        Assert.True(Present(dearer) <= Present(Rates));
        Assert.True(Build(dearer) >= Build(Rates));
    }

    [Theory]
    [InlineData("days, year, 0, 0")]
    [InlineData("days, year, 0, 1000000000")]
    [InlineData("fish, each, 0, 0")]
    [InlineData("labour, h, 1000000000, 1000000000")]
    [InlineData("interest, %, 0, 1000000000")]
    [InlineData("life, years, 0, 1000000000")]
    public void Whatever_the_owner_says_every_figure_is_a_number(string line)
    {
        string name = line.Split(',')[0];
        string rates = string.Join('\n', Rates.Split('\n').Where(l => !l.StartsWith(name + ",", StringComparison.Ordinal)).Append(line));

        Assert.All(Subject(rates).Figures, f => Assert.True(double.IsFinite(f.Value), f.ToString()));
    }

    [Theory]
    [InlineData("455 used", 455, 455)]
    [InlineData("400 to 600", 400, 600)]
    [InlineData("about 1 200-1 500 new", 1200, 1500)]
    [InlineData("12.50", 12.5, 12.5)]
    public void The_first_figure_of_a_cost_counts(string text, double low, double high)
        => Assert.Equal(new Range(low, high), ItemCosts.Read(text));

    [Theory]
    [InlineData("given")]
    [InlineData("")]
    [InlineData("999999999999")]
    public void A_cost_without_a_figure_is_not_said(string text) => Assert.Null(ItemCosts.Read(text));

    private static SizedSubject Subject(string? rates)
    {
        string text = $"""
            plan "Box"
              units metric
              code none
              product fish, 1 kg each
              {(rates is null ? "note \"none\"" : "rates \"our rates.csv\"")}
            shell container 20 ft standard
              doors west
            room work "Work room" dry from west to east
            door d1 work to outside, south wall, 700 from west, 900 x 2000, swings out, opens from inside
            station bench "Bench" in work
              size 1200 x 600 x 900
              place against north wall, 1000 from west
              worker south
              work 30 s each
              cost "400 to 600"
            flow product
              outside -> d1 -> bench -> d1 -> outside by hand
            day
              target 20 fish/h for 5 h
              crew work 1
            """;
        var files = new MemoryFiles(new Dictionary<string, string> { ["our rates.csv"] = rates ?? "" });
        var bound = PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, "test.unit")), files);
        Assert.Empty(bound.Diagnostics);
        return CheckedPlan.Facts(bound.Plan!).MoneySizes;
    }
}
