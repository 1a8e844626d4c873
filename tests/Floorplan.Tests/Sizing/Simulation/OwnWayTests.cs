using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>Products of one day that take different ways through the stations.</summary>
public sealed class OwnWayTests
{
    private const string Ways = "  outside -> d1 -> cones -> scald -> pluck -> bench -> rack by hand 16 kg";

    private static readonly string Both = new DayLine { Bench = "work 12 s each\n  waits 16 birds", Store = "holds 600 birds" }.Text
        .Replace("product birds, 2 kg each", "product birds, 2 kg each\n  product rabbits, 2 kg each", StringComparison.Ordinal)
        .Replace("  crew kill", "  target 60 rabbits/h for 1 h\n  crew kill", StringComparison.Ordinal)
        .Replace("  holds 18 birds", "  holds 18 birds\n  for rabbits holds 12", StringComparison.Ordinal)
        .Replace("  holds 600 birds", "  holds 600 birds\n  for rabbits holds 300", StringComparison.Ordinal);

    /// <summary>Rabbits are not scalded: no figures of them are asked for there, and none comes there.</summary>
    [Fact]
    public void One_skips_stations()
    {
        var day = Day(Both.Replace(
            Ways, $"{Ways}\nflow product \"Rabbits\" for rabbits\n  outside -> d1 -> cones -> bench -> rack by hand 16 kg",
            StringComparison.Ordinal));
        Assert.Empty(day.Planned.Needs);
        Assert.Equal(460, day.Paced!.Outs.Count);
        Assert.Equal([460, 400, 400, 460, 460], Items(day, "cones", "scald", "pluck", "bench", "rack"));
        Assert.Equal(60, day.Paced.OutProducts.Count(p => p == 1));

        // By themselves they do not wait for eight to fill a batch: from cones to bench at once.
        Assert.True(day.Paces[1].PerHour > 60);
    }

    /// <summary>Each store has what comes to it: 400 birds, 60 rabbits in a rack for 40.</summary>
    [Fact]
    public void One_ends_in_another_store()
    {
        const string shelf = "store shelf \"Shelf\" in kill\n  size 800 x 500 x 1800\n  place at 9500, 600\n  holds 40 rabbits\n";
        const string way = "\nflow product for rabbits\n  outside -> d1 -> cones -> bench -> shelf by hand 16 kg";
        string text = Both.Replace(Ways, Ways + way, StringComparison.Ordinal)
            .Replace("flow product\n", $"{shelf}flow product\n", StringComparison.Ordinal);
        var plan = CheckedPlan.Plan(text);
        var day = CheckedPlan.Facts(plan).Day;
        Assert.Empty(day.Planned.Needs);
        var stores = DayStore.Of(plan, day).ToDictionary(s => s.Id);
        Assert.Equal((400, 600.0), (stores["rack"].Items, stores["rack"].Holds!.Value));
        Assert.Equal((60, 40.0), (stores["shelf"].Items, stores["shelf"].Holds!.Value));
        Assert.Null(stores["rack"].FullAt);
        var rabbits = day.Paced!.Outs.Zip(day.Paced.OutProducts).Where(o => o.Second == 1).Select(o => o.First).ToList();
        Assert.Equal(rabbits[40], stores["shelf"].FullAt);
    }

    /// <summary>Ways of its own, the same as the common ones, are the same line.</summary>
    [Fact]
    public void The_same_way_said_for_one_product_changes_nothing()
    {
        string both = Both.Replace("batch 8 birds", "batch 8 birds\n  for rabbits batch 8", StringComparison.Ordinal);
        var common = Day(both);
        var own = Day(both.Replace("flow product\n", "flow product for birds\n", StringComparison.Ordinal)
            .Replace(Ways, $"{Ways}\nflow product for rabbits\n{Ways}", StringComparison.Ordinal));
        Assert.Equal(common.Paced!.Outs, own.Paced!.Outs);
        Assert.Equal(common.Paces.Select(p => p.PerHour), own.Paces.Select(p => p.PerHour));
    }

    [Fact]
    public void All_kinds_of_ways_in_one_plan_are_run()
    {
        var day = Day(FullDay.Ways);
        Assert.Empty(day.Planned.Needs);
        Assert.Equal(150, day.Paced!.Outs.Count);
        Assert.Equal([120, 30], Items(day, "rack", "box"));

        // Trout pass the bench twice and every 20th goes back each time: at least an eighteenth more than 120.
        Assert.True(Items(day, "bench").Single() >= 150 + 6);
        Assert.All(day.Paces, p => Assert.True(p.PerHour > 0 && p.Half > 0));
    }

    [Fact]
    public void A_product_without_a_way_is_told()
    {
        var day = Day(Both.Replace("flow product\n", "flow product for birds\n", StringComparison.Ordinal));
        var need = Assert.Single(day.Planned.Needs);
        Assert.Equal("no flow of product for rabbits", need.Missing);
        Assert.Contains("`flow product for rabbits`", need.Write, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flow_for_a_product_that_is_none_is_a_mistake()
    {
        var found = CheckedPlan.Bind(Both.Replace("flow product\n", "flow product for rabits\n", StringComparison.Ordinal)).Diagnostics;
        Assert.Contains(found, d => d.Code == "unknown-product" && d.Span.Value == "rabits" && d.Help == "did you mean `rabbits`?");
    }

    private static PlannedDay Day(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text)).Day;

    private static IEnumerable<int> Items(PlannedDay day, params string[] names)
        => names.Select(n => day.Paced!.Steps.Single(s => s.Name == n).Items);
}
