using Floorplan.Model.Space.Turning;
using Floorplan.Tests.Checks.Support;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Model.Space.Turning;

/// <summary>
/// A rectangle pushed round a right-angled corner, a standard exercise of calculus: at each angle its ends touch the outer walls and its
/// side the inner corner, and the shortest of those lengths goes round; for no width (a^(2/3) + b^(2/3))^(3/2).
/// </summary>
public sealed class TextbookCornerTests
{
    private const double Finest = 10;
    private const double Arm = 12000;

    private readonly Moving none = new(new SolidEdges([]), Finest, new Effort(1));

    [Theory]
    [InlineData(1000, 1000, 600)]
    [InlineData(900, 1200, 500)]
    [InlineData(800, 1500, 600)]
    [InlineData(1200, 1200, 300)]
    [InlineData(700, 2000, 400)]
    public void What_goes_round_by_the_book_goes_round(double a, double b, double width)
    {
        double longest = CornerTurn.Longest(a, b, width);

        Assert.True(GoesRound(a, b, new LongBox(longest - 1, width)).Goes);
        Assert.True(GoesRound(a, b, new LongBox(longest / 2, width)).Goes);
    }

    /// <summary>The kind side is no kinder than said: smaller by the tolerance all round, it does not go by the book either.</summary>
    [Theory]
    [InlineData(1000, 1000, 600)]
    [InlineData(900, 1200, 500)]
    [InlineData(800, 1500, 600)]
    [InlineData(1200, 1200, 300)]
    [InlineData(700, 2000, 400)]
    public void What_does_not_by_more_than_the_tolerance_does_not(double a, double b, double width)
    {
        double tolerance = none.Tolerance(new LongBox(CornerTurn.Longest(a, b, width), width));
        double longest = CornerTurn.Longest(a, b, width - (2 * tolerance)) + (2 * tolerance);

        Assert.False(GoesRound(a, b, new LongBox(longest + 1, width)).Goes);
        Assert.True(tolerance < 20);
    }

    [Fact]
    public void A_ladder_goes_round_as_the_book_says()
        => Assert.True(GoesRound(900, 1300, new LongBox(Math.Pow(Math.Pow(900, 2 / 3.0) + Math.Pow(1300, 2 / 3.0), 1.5) - 1, 1)).Goes);

    /// <summary>Swept floor lies between the walls, but for the tolerance.</summary>
    [Fact]
    public void The_swept_floor_stays_between_the_walls()
    {
        var box = new LongBox(1500, 600);
        var passages = Passages(1000, 1000);

        var swept = GoesRound(1000, 1000, box).Swept(box);

        Assert.True(passages.Buffer(none.Tolerance(box)).Covers(swept));
        Assert.True(swept.Area > 2 * 7000 * 600);
    }

    private static Moved GoesRound(double a, double b, LongBox box)
    {
        var corners = Passages(a, b).ExteriorRing.Coordinates;
        var edges = new SolidEdges(corners.Zip(corners.Skip(1), (p, q) => new SolidEdge(p, q, null)));
        var moved = new Moving(edges, Finest, new Effort(long.MaxValue)) { MostOnce = long.MaxValue }.Go(new Move(
            box, new Envelope(0, Arm, 0, Arm), [new Spot(new(Arm - 3000, a / 2), 300, 0)], [new Spot(new(b / 2, Arm - 3000), 300)]));
        Assert.True(moved.IsSure);
        return moved;
    }

    /// <summary>One along the x axis, a wide, and one along the y axis, b wide.</summary>
    private static Polygon Passages(double a, double b) => Floorplan.Model.Shapes.Shape.Factory.CreatePolygon(
    [
        new(0, 0), new(Arm, 0), new(Arm, a), new(b, a), new(b, Arm), new(0, Arm), new(0, 0),
    ]);
}
