using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>A day with two products, one after the other; lines small enough to work out by hand, and one plan.</summary>
public sealed class SeveralProductsTests
{
    private static readonly string Plan = new DayLine
    {
        Cones = "work 4 s each\n  stays 2 min\n  holds 18 birds\n  for geese work 10 s each holds 6 stays 3 min",
        Scald = "batch 8 birds\n  cycle 1 min\n  for geese batch 2 cycle 2 min",
        Pluck = "batch 8 birds\n  cycle 50 s\n  for geese batch 2 cycle 1 min",
        Bench = "work 12 s each\n  waits 16 birds\n  for geese work 60 s each waits 4",
        Store = "holds 600 birds\n  for geese holds 80",
    }.Text.Replace("product birds, 2 kg each", "product birds, 2 kg each\n  product geese, 5 kg each", StringComparison.Ordinal)
        .Replace("  crew kill", "  target 30 geese/h for 1 h\n  changeover 15 min\n  crew kill", StringComparison.Ordinal);

    /// <summary>
    /// Four of 10 s, then three of 30 s, in one machine: 130 s. To be set for the second kind it takes 60 s more.
    /// </summary>
    [Fact]
    public void A_machine_is_set_for_the_next_product_once()
    {
        Assert.Equal(130, End(0));
        Assert.Equal(190, End(60));

        static double End(double change)
        {
            var first = Machine(10, 0);
            var line = TestLines.Of(new LineSupply(4, TaskTime.None), first);
            var second = new LineLot(new LineSupply(3, TaskTime.None), 0, [line.Steps[0], Machine(30, change)], line.Moves);
            return Ticks.Seconds(LineRun.Of(line with { Later = [second] }).End);
        }

        static LineStep Machine(double seconds, double change) =>
            new() { Name = "machine", Stay = TaskTime.OfSeconds(seconds), Waits = 10, ChangeOver = Ticks.FromSeconds(change) };
    }

    /// <summary>A tank for 10 small or 2 large ones: 5 small take half of it, so one large one goes in beside them.</summary>
    [Fact]
    public void A_tank_is_shared_by_the_room_that_each_takes()
    {
        var small = new LineStep { Name = "tank", Stay = TaskTime.OfSeconds(100), Places = 10 };
        var line = TestLines.Of(new LineSupply(5, TaskTime.None), small);
        var large = new LineLot(
            new LineSupply(2, TaskTime.None), Ticks.FromSeconds(1), [line.Steps[0], small with { Places = 2 }], line.Moves);
        var run = LineRun.Of(line with { Later = [large] });

        // The first large one goes in at 1 s, the other when the small ones are out.
        Assert.Equal([100, 100, 100, 100, 100, 101, 200], run.Outs.Select(o => Ticks.Seconds(o)));
        Assert.Equal([0, 0, 0, 0, 0, 1, 1], run.OutProducts);
    }

    /// <summary>Batches are of one product: 3 of one and 3 of the other in batches of 4 are two batches.</summary>
    [Fact]
    public void A_batch_is_of_one_product()
    {
        var machine = new LineStep { Name = "machine", Stay = TaskTime.OfSeconds(60), Batch = 4, Least = 4, Waits = 10 };
        var line = TestLines.Of(new LineSupply(3, TaskTime.None), machine);
        var run = LineRun.Of(line with { Later = [new LineLot(new LineSupply(3, TaskTime.None), 0, line.Steps, line.Moves)] });
        Assert.Equal(120, Ticks.Seconds(run.End));
    }

    /// <summary>One product said twice, in two lots, is one product: the same run as in one lot.</summary>
    [Fact]
    public void Two_lots_of_one_product_are_as_one()
    {
        foreach (int seed in Enumerable.Range(0, 30))
        {
            var random = new Random(seed);
            LineStep[] steps = [.. Enumerable.Range(0, 4).Select(i => new LineStep
            {
                Name = $"s{i}",
                Places = random.Next(1, 4),
                Work = TaskTime.OfSeconds(random.Next(0, 9)),
                Stay = TaskTime.OfSeconds(random.Next(0, 20)),
                Waits = random.Next(0, 4),
                Crew = 0,
                Hands = 3,
            })];
            var line = TestLines.Of(new LineSupply(40, TaskTime.OfSeconds(5)), steps) with { Crews = [new LineCrew("all", 2)] };
            var lots = line with
            {
                Supply = new LineSupply(15, TaskTime.OfSeconds(5)),
                Later = [new LineLot(new LineSupply(25, TaskTime.OfSeconds(5)), Ticks.FromSeconds(75), line.Steps, line.Moves)],
            };
            Assert.Equal(LineRun.Of(line).Outs, LineRun.Of(lots).Outs);
        }
    }

    [Fact]
    public void A_plan_with_two_products_is_run_with_both()
    {
        var plan = CheckedPlan.Plan(Plan);
        var day = CheckedPlan.Facts(plan).Day;
        Assert.Equal("200 birds/h for 2 h, then 30 geese/h for 60 min", day.Planned.Asked);
        Assert.Equal(430, day.Paced!.Outs.Count);
        Assert.Equal(30, day.Paced.OutProducts.Count(p => p == 1));

        // Geese: 2 in 2 min at the scald tank are 60 an hour at most; birds: four people, as in the plan without geese.
        Assert.InRange(day.Paces[1].PerHour, 45, 60);
        Assert.Equal(new DayLine { Store = "holds 600 birds" }.Day().Rate, day.Paces[0].PerHour, 1);
        Assert.Equal(day.Paces[0].PerHour / 200 < day.Paces[1].PerHour / 30 ? 0 : 1, day.Planned.Tightest);
        Assert.Equal(day.Paces[day.Planned.Tightest].PerHour, day.Rate);

        // 400 of 600 and 30 of 80 are more than the rack has room for: 1.04.
        var store = Assert.Single(DayStore.Of(plan, day));
        Assert.Equal(430 / ((400 / 600.0) + (30 / 80.0)), store.Holds!.Value, 3);
        Assert.NotNull(store.FullAt);
    }

    [Fact]
    public void A_plan_that_says_all_is_run()
    {
        var plan = CheckedPlan.Plan(FullDay.Text);
        var day = CheckedPlan.Facts(plan).Day;
        Assert.Empty(day.Planned.Needs);
        Assert.Equal(380, day.Paced!.Outs.Count);
        Assert.All(day.Paces, p => Assert.True(p.PerHour > 0 && p.Half > 0));
        Assert.True(day.Paced.Bins.Single().Kilograms > 0);
    }

    /// <summary>Scald tank and plucker take a quarter of an hour each to be set, at the same time but for the first goose.</summary>
    [Fact]
    public void A_changeover_takes_its_time()
    {
        long with = CheckedPlan.Facts(CheckedPlan.Plan(Plan)).Day.Paced!.End;
        long without = CheckedPlan.Facts(CheckedPlan.Plan(
            Plan.Replace("  changeover 15 min\n", "", StringComparison.Ordinal))).Day.Paced!.End;
        Assert.InRange(Ticks.Seconds(with - without), 60, 60 * 60);
    }

    [Fact]
    public void What_is_counted_in_another_product_only_is_asked_for()
    {
        var day = CheckedPlan.Facts(CheckedPlan.Plan(Plan.Replace("  for geese holds 80", "", StringComparison.Ordinal))).Day;
        Assert.Null(day.Paced);
        var need = Assert.Single(day.Planned.Needs);
        Assert.Equal(("not how many geese rack takes", "`for geese holds 8` in store rack"), (need.Missing, need.Write));
    }

    [Fact]
    public void Figures_for_a_product_that_is_none_are_a_mistake()
    {
        var found = CheckedPlan.Bind(Plan.Replace("for geese holds", "for gees holds", StringComparison.Ordinal)).Diagnostics;
        Assert.Contains(found, d => d.Code == "unknown-product" && d.Span.Value == "gees" && d.Help == "did you mean `geese`?");
    }

    [Fact]
    public void The_same_product_twice_is_a_mistake()
    {
        var found = CheckedPlan
            .Bind(Plan.Replace("target 30 geese/h for 1 h", "target 30 birds/h for 1 h", StringComparison.Ordinal)).Diagnostics;
        Assert.NotEmpty(found);
    }
}
