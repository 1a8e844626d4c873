using CsCheck;
using Floorplan.Arrange.CuttingStock;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;
using Xunit;

namespace Floorplan.Tests.Arrange;

/// <summary>Fewest bars: against instances whose answer is known, and against every way there is for small ones.</summary>
public sealed class StockCutterTests
{
    private static readonly SteelSection Tube = SteelSection.Usual(UnitSystem.Metric);

    /// <summary>
    /// First fit decreasing takes three bars of 10 here (4 4, 3 3 3, 3); two hold all (4 3 3, 4 3 3). A textbook case of its weakness.
    /// </summary>
    [Fact]
    public void The_solver_finds_what_first_fit_misses()
    {
        var plan = Cut(10_000, 0, 4000, 4000, 3000, 3000, 3000, 3000);
        Assert.Equal(2, plan.Bars.Count);
        Assert.True(plan.IsFewest);
    }

    [Fact]
    public void The_saw_cut_counts()
    {
        Assert.Equal(2, Cut(6000, 0, 2000, 2000, 2000, 3000, 3000).Bars.Count);
        Assert.Equal(2, Cut(6000, 3, 2000, 2000, 1994, 2997, 3000).Bars.Count);
        Assert.Equal(3, Cut(6000, 3, 2000, 2000, 2000, 3000, 3000).Bars.Count);
    }

    [Fact]
    public void A_piece_longer_than_a_bar_is_said_and_the_rest_is_cut()
    {
        var plan = Cut(6000, 3, 6001, 1000);
        Assert.Equal(Length.FromMillimetres(6001), Assert.Single(plan.TooLong).Length);
        Assert.Equal(Length.FromMillimetres(6000 - 1000 - 3), Assert.Single(plan.Bars).Left);
    }

    [Fact]
    public void Nothing_to_cut_takes_no_bar() => Assert.Empty(Cut(6000, 3).Bars);

    /// <summary>Every piece once, no bar over its length, and no more bars than the best of all ways.</summary>
    [Fact]
    public void It_is_as_good_as_trying_every_way() => Gen.Int[400, 4000].Array[1, 7].Sample(
        lengths =>
        {
            var plan = Cut(6000, 3, lengths);
            Assert.Equal(lengths.Order(), plan.Bars.SelectMany(b => b.Pieces).Select(p => (int)p.Length.Millimetres).Order());
            Assert.All(plan.Bars, b => Assert.True(b.Pieces.Sum(p => p.Length.Millimetres) + (3 * (b.Pieces.Count - 1)) <= 6000));
            Assert.True(plan.IsFewest);
            Assert.Equal(EveryWay(lengths, 0, []), plan.Bars.Count);
        },
        iter: 200);

    [Fact]
    public void It_cuts_the_same_way_every_time()
    {
        int[] lengths = [2142, 2142, 1000, 1300, 1300, 900, 900, 2142, 2142, 1000, 700, 700, 450, 450, 3100, 2900, 2750];
        string Way()
            => string.Join(" | ", Cut(6000, 3, lengths).Bars.Select(b => string.Join(' ', b.Pieces.Select(p => p.Length.Millimetres))));
        Assert.Equal(Way(), Way());
    }

    private static int EveryWay(int[] lengths, int next, List<int> bars)
    {
        if (next == lengths.Length)
        {
            return bars.Count;
        }

        int best = EveryWay(lengths, next + 1, [.. bars, lengths[next]]);
        for (int i = 0; i < bars.Count; i++)
        {
            if (bars[i] + 3 + lengths[next] <= 6000)
            {
                List<int> with = [.. bars];
                with[i] += 3 + lengths[next];
                best = Math.Min(best, EveryWay(lengths, next + 1, with));
            }
        }

        return best;
    }

    private static StockPlan Cut(double bar, double kerf, params int[] lengths) => StockCutter.Cut(
        Tube, [.. lengths.Select((l, i) => new StockPiece($"p{i}", "post", Length.FromMillimetres(l)))], Length.FromMillimetres(bar),
        Length.FromMillimetres(kerf));
}
