using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>Washing, pauses, second work and help, on lines small enough to work out by hand.</summary>
public sealed class HandsTests
{
    /// <summary>
    /// Waste of 1 kg each into a bin of 5 kg, which the one who works empties in a minute: after every five, so 60 of 10 s take 600 s and
    /// 11 trips. A crew that told itself of the full bin at every look never stopped looking.
    /// </summary>
    [Theory]
    [InlineData(1, 600 + (11 * 60))]
    [InlineData(3, 600 + (11 * 60))]
    public void Who_works_empties_the_bin_and_goes_on(int people, double seconds)
    {
        var bench = new LineStep
        {
            Name = "bench",
            Places = 3,
            Hands = 3,
            Waits = 100,
            Crew = 0,
            Work = TaskTime.OfSeconds(10),
            Waste = [(0, 1)],
        };
        var run = LineRun.Of(TestLines.Of(new LineSupply(60, TaskTime.None), bench) with
        {
            Crews = [new("hands", people)],
            Bins = [new LineBin("bin", 5) { Crew = 0, Trip = Ticks.FromSeconds(60), Near = 1 }],
        });
        Assert.Equal(60, run.Outs.Count);
        Assert.Equal(11, run.Bins.Single().Emptied);
        Assert.Equal(seconds, Ticks.Seconds(run.People.Sum(p => p.Working + p.Emptying)));
    }

    private static readonly LineStep Bench = new() { Name = "bench", Work = TaskTime.OfSeconds(10), Crew = 0, Waits = 100 };

    private static ProductLine Line(int items, params LineStep[] steps)
        => TestLines.Of(new LineSupply(items, TaskTime.None), steps) with { Crews = [new LineCrew("room", 1)] };

    private static double End(ProductLine line) => Ticks.Seconds(LineRun.Of(line).End);

    /// <summary>Ten pieces of 10 s with 6 s after each fourth: 100 + 2 x 6.</summary>
    [Fact]
    public void A_pause_comes_after_so_many_pieces()
        => Assert.Equal(112, End(Line(10, Bench with { Pause = 6 * Ticks.Second, PauseEvery = 4 })));

    /// <summary>A fifth of ten pieces is worked on again: 12 x 10 s.</summary>
    [Fact]
    public void A_share_of_the_pieces_is_worked_on_twice() => Assert.Equal(120, End(Line(10, Bench with { Rework = 0.2 })));

    /// <summary>Before the first piece, and after the break that begins while the third is worked on: 5 x 10 + 2 x 40 + 30 - 0.</summary>
    [Fact]
    public void Hands_are_washed_before_the_first_piece_and_after_a_break()
    {
        var line = Line(5, Bench) with
        {
            HandWash = 40 * Ticks.Second,
            Breaks = [new LineBreak(70 * Ticks.Second, 100 * Ticks.Second)],
        };
        var run = LineRun.Of(line);

        // 40 s of washing, three pieces until 70; rest until 100; washed until 140, two pieces.
        Assert.Equal(160, Ticks.Seconds(run.End));
        Assert.Equal(80, Ticks.Seconds(run.People[0].Washing));
    }

    /// <summary>The break of 30 s begins at 25, in the third piece: that is done at 30, and the rest lasts until 60.</summary>
    [Fact]
    public void Who_is_at_work_when_a_break_begins_rests_as_long_as_the_others()
    {
        var line = Line(4, Bench) with { Breaks = [new LineBreak(25 * Ticks.Second, 55 * Ticks.Second)] };
        Assert.Equal(70, End(line));

        // A piece of 40 s goes on until 40, 15 s of the break are had, and 15 s are owed.
        var slow = Line(2, Bench with { Work = TaskTime.OfSeconds(40) }) with { Breaks = line.Breaks };
        Assert.Equal(40 + 30 + 40, End(slow));
    }

    /// <summary>One person, two rooms: hands are washed on each way into the other.</summary>
    [Fact]
    public void Hands_are_washed_on_the_way_into_another_room()
    {
        var line = Line(2, Bench with { Waits = 0 }, Bench with { Name = "table", Waits = 0 }) with
        {
            HandWash = 40 * Ticks.Second,
            Rooms = [0, 0, 1],
        };

        // What is at hand comes first: both pieces at the bench, then both at the table.
        Assert.Equal(2 * (40 + 10 + 10), End(line));
    }

    /// <summary>Help comes from those who have nothing else to do: the second of two crews, whose own work is later and short.</summary>
    [Fact]
    public void A_crew_that_helps_makes_the_line_faster()
    {
        var line = Line(20, Bench with { Hands = 2, Places = 2 }, Bench with { Name = "pack", Work = TaskTime.OfSeconds(1), Crew = 1 }) with
        {
            Crews = [new LineCrew("cut", 1), new LineCrew("pack", 1)],
        };
        var alone = LineRun.Of(line);
        var helped = LineRun.Of(line with { Crews = [line.Crews[0], line.Crews[1] with { Helps = [0] }] });
        Assert.Equal(201, Ticks.Seconds(alone.End));

        // 20 pieces of 10 s and of 1 s for two people: 110 s at least; nothing begun is broken off, so at most one piece more.
        Assert.InRange(Ticks.Seconds(helped.End), 110, 121);
        Assert.True(helped.People[1].Working > 80 * Ticks.Second);
    }
}
