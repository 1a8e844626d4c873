using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views.Flows;
using Xunit;

namespace Floorplan.Tests.Drawing.Views;

public class RouteLanesTests
{
    private const double Pitch = 2;

    private static readonly PaperPoint[] Corridor = [new(0, 0), new(40, 0), new(40, 30)];

    [Fact]
    public void A_route_alone_keeps_its_true_way()
    {
        Assert.Equal(Corridor, new RouteLanes(Pitch).Lay(Corridor));
    }

    [Fact]
    public void Routes_that_share_a_corridor_are_laid_a_pitch_apart()
    {
        var lanes = new RouteLanes(Pitch);
        var laid = Enumerable.Range(0, 4).Select(_ => lanes.Lay(Corridor)).ToList();

        double[] offsets = [.. laid.Select(path => path[0].Y).Order()];
        Assert.All(offsets.Zip(offsets.Skip(1)), pair => Assert.Equal(Pitch, pair.Second - pair.First, 6));
        Assert.All(laid, path => Assert.Equal(path[1].X, path[2].X, 6));
    }

    [Fact]
    public void The_way_back_does_not_lie_on_the_way_there()
    {
        var laid = new RouteLanes(Pitch).Lay([new(0, 0), new(40, 0), new(40, 1), new(0, 1)]);

        Assert.True(Math.Abs(laid[0].Y - laid[3].Y) >= Pitch, $"{laid[0]} and {laid[3]}");
    }

    [Fact]
    public void Routes_that_only_cross_are_not_moved()
    {
        var lanes = new RouteLanes(Pitch);
        lanes.Lay(Corridor);
        PaperPoint[] across = [new(20, -20), new(20, 20)];

        Assert.Equal(across, lanes.Lay(across));
    }
}
