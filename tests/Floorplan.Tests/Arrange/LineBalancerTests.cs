using Floorplan.Arrange.Balancing;
using Xunit;

namespace Floorplan.Tests.Arrange;

/// <summary>
/// Six lines of A. Scholl, Data of assembly line balancing problems, 1993: task times, precedence pairs, and the 27 published fewest
/// places for a cycle.
/// </summary>
public sealed class LineBalancerTests
{
    private static readonly Dictionary<string, (long[] Times, string Order)> Lines = new()
    {
        ["Bowman"] = ([11, 17, 9, 5, 8, 12, 10, 3], "1,2 2,3 2,4 3,5 3,6 4,6 5,7 6,8"),
        ["Jackson"] = ([6, 2, 5, 7, 1, 2, 3, 6, 5, 5, 4], "1,2 1,3 1,4 1,5 2,6 3,7 4,7 5,7 6,8 7,9 8,10 9,11 10,11"),
        ["Jaeschke"] = ([5, 3, 4, 5, 4, 5, 1, 4, 6], "1,2 1,3 2,4 3,4 4,5 4,6 4,7 5,8 6,9 7,9 8,9"),
        ["Mansoor"] = ([4, 38, 45, 12, 10, 8, 12, 10, 2, 10, 34], "1,4 2,4 2,5 3,11 4,6 5,7 6,8 7,9 8,10 9,10 10,11"),
        ["Mertens"] = ([1, 5, 4, 3, 5, 6, 5], "1,2 1,4 2,3 2,5 4,7 5,6"),
        ["Mitchell"] = (
            [4, 3, 9, 5, 9, 4, 8, 7, 5, 1, 3, 1, 5, 3, 5, 3, 13, 5, 2, 3, 7],
            "1,2 1,3 2,21 3,4 4,5 4,21 5,6 5,7 6,8 7,8 7,14 8,9 9,10 9,11 9,12 9,13 10,15 11,15 12,15 13,17 13,18 14,19 15,16 15,18 16,17 "
                + "17,20 18,19"),
    };

    [Theory]
    [InlineData("Bowman", 20, 5)]
    [InlineData("Jackson", 7, 8)]
    [InlineData("Jackson", 9, 6)]
    [InlineData("Jackson", 10, 5)]
    [InlineData("Jackson", 13, 4)]
    [InlineData("Jackson", 14, 4)]
    [InlineData("Jackson", 21, 3)]
    [InlineData("Jaeschke", 6, 8)]
    [InlineData("Jaeschke", 7, 7)]
    [InlineData("Jaeschke", 8, 6)]
    [InlineData("Jaeschke", 10, 4)]
    [InlineData("Jaeschke", 18, 3)]
    [InlineData("Mansoor", 48, 4)]
    [InlineData("Mansoor", 62, 3)]
    [InlineData("Mansoor", 94, 2)]
    [InlineData("Mertens", 6, 6)]
    [InlineData("Mertens", 7, 5)]
    [InlineData("Mertens", 8, 5)]
    [InlineData("Mertens", 10, 3)]
    [InlineData("Mertens", 15, 2)]
    [InlineData("Mertens", 18, 2)]
    [InlineData("Mitchell", 14, 8)]
    [InlineData("Mitchell", 15, 8)]
    [InlineData("Mitchell", 21, 5)]
    [InlineData("Mitchell", 26, 5)]
    [InlineData("Mitchell", 35, 3)]
    [InlineData("Mitchell", 39, 3)]
    public void Published_lines_take_the_published_fewest_places(string name, long cycle, int fewest)
    {
        var (times, pairs) = Lines[name];
        var order = pairs.Split(' ').Select(p => p.Split(',')).Select(p => (Number(p[0]) - 1, Number(p[1]) - 1)).ToList();
        var line = LineBalancer.Balance(times, order, cycle);
        Assert.Equal(fewest, line.Places);
        Assert.True(line.IsFewest, $"only {line.AtLeast} are proven");
        Assert.All(order, o => Assert.True(line.PlaceOf[o.Item1] <= line.PlaceOf[o.Item2]));
        Assert.All(line.PlaceOf.Select((place, task) => (place, task)).GroupBy(x => x.place), p => Assert.True(
            p.Sum(x => times[x.task]) <= cycle));
        Assert.Equal(times.Length, line.PlaceOf.Count);
    }

    [Fact]
    public void No_tasks_take_no_place() => Assert.Equal(0, LineBalancer.Balance([], [], 10).Places);

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
