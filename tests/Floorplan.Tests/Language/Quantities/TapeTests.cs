using Floorplan.Language.Quantities;
using Xunit;

namespace Floorplan.Tests.Language.Quantities;

/// <summary>Worked out by hand, with 25.4 mm to the inch (NIST SP 811).</summary>
public class TapeTests
{
    [Theory]
    [InlineData(2133.5, "2134", "2134")]
    [InlineData(2133.4, "2133", "2133")]
    [InlineData(0.4, "0", "0")]
    public void Millimetres_are_whole(double mm, string ordinary, string steel)
    {
        Assert.Equal(ordinary, Tape.For(UnitSystem.Metric).Dimension(Length.FromMillimetres(mm)));
        Assert.Equal(steel, Tape.ForSteel(UnitSystem.Metric).Dimension(Length.FromMillimetres(mm)));
    }

    /// <summary>900 mm is 35.433 in, which is 35 3.46/8 and 35 6.93/16; 22 mm is 6.93/8 and 13.86/16.</summary>
    [Theory]
    [InlineData(900, "2'-11 3/8\"", "2'-11 7/16\"")]
    [InlineData(22, "7/8\"", "7/8\"")]
    [InlineData(1.5875, "1/8\"", "1/16\"")]
    [InlineData(2590.8, "8'-6\"", "8'-6\"")]
    public void Feet_have_eighths_and_steel_sixteenths(double mm, string ordinary, string steel)
    {
        Assert.Equal(ordinary, Tape.For(UnitSystem.Feet).Dimension(Length.FromMillimetres(mm)));
        Assert.Equal(steel, Tape.ForSteel(UnitSystem.Feet).Dimension(Length.FromMillimetres(mm)));
    }

    [Fact]
    public void What_a_tape_shows_is_printed_as_it_is()
    {
        foreach (var tape in new[] { Tape.For(UnitSystem.Metric), Tape.For(UnitSystem.Feet), Tape.ForSteel(UnitSystem.Feet) })
        {
            Assert.All(Enumerable.Range(-50, 100).Select(i => tape.Step * i), l => Assert.Equal(l, tape.Round(l)));
        }
    }

    /// <summary>By thirds of a step, so that each stretch alone is rounded the other way.</summary>
    [Fact]
    public void Stretches_add_up_and_are_off_by_less_than_a_step()
    {
        var tape = Tape.For(UnitSystem.Metric);
        Length[] places = [.. Enumerable.Range(-9, 40).Select(i => Length.FromMillimetres(i * 100.3333))];
        var stretches = places.Zip(places.Skip(1)).ToList();
        var sum = stretches.Aggregate(Length.Zero, (all, s) => all + tape.Between(s.First, s.Second));
        Assert.Equal(tape.Between(places[0], places[^1]), sum);
        Assert.All(stretches, s => Assert.True(Length.Abs(tape.Between(s.First, s.Second) - (s.Second - s.First)) < tape.Step));
    }

    /// <summary>A place comes out of geometry in floating point; half a step must not fall to either side by chance.</summary>
    [Fact]
    public void A_nanometre_moves_no_half_step()
        => Assert.Equal(
            Tape.For(UnitSystem.Metric).Round(new Length(2_133_500_000)), Tape.For(UnitSystem.Metric).Round(new Length(2_133_499_999)));
}
