using Floorplan.Drawing.Blocks;
using Xunit;

namespace Floorplan.Tests.Drawing.Frames;

public class ColumnSharesTests
{
    /// <summary>
    /// Before, the little that was left over became the width of every column: a table on sheet 5 of invented unit 63 broke letter
    /// by letter.
    /// </summary>
    [Fact]
    public void Widths_that_find_room_stay_as_they_are()
        => Assert.Equal([27, 10, 10, 10], ColumnShares.Capped([27, 10, 10, 10], 60));

    [Fact]
    public void Only_the_widest_are_cut_down()
        => Assert.Equal([20, 10, 20, 10], ColumnShares.Capped([30, 10, 25, 10], 60));
}
