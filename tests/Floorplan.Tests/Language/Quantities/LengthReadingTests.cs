using System.Numerics;
using CsCheck;
using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Quantities;

/// <summary>Check values are exact: 1 in = 25.4 mm, 1 ft = 12 in (international yard and pound agreement, 1959).</summary>
public class LengthReadingTests
{
    [Theory]
    [InlineData("8'-6 1/2\"", 2_603_500_000)]
    [InlineData("8' 6.5\"", 2_603_500_000)]
    [InlineData("8'6½\"", 2_603_500_000)]
    [InlineData("8\u2032\u20136\u00BD\u2033", 2_603_500_000)]
    [InlineData("8\u2019 6 1/2\u201D", 2_603_500_000)]
    [InlineData("8 ft 6 1/2 in", 2_603_500_000)]
    [InlineData("8'-6", 2_590_800_000)]
    [InlineData("8'6", 2_590_800_000)]
    [InlineData("8'-6''", 2_590_800_000)]
    [InlineData("8'", 2_438_400_000)]
    [InlineData("12 ft", 3_657_600_000)]
    [InlineData("6 1/2\"", 165_100_000)]
    [InlineData("6-1/2\"", 165_100_000)]
    [InlineData("¾ in", 19_050_000)]
    [InlineData("1/64 in", 396_875)]
    [InlineData("9 in", 228_600_000)]
    [InlineData("9 inches", 228_600_000)]
    [InlineData("2600", 2_600_000_000)]
    [InlineData("2600 mm", 2_600_000_000)]
    [InlineData("2600mm", 2_600_000_000)]
    [InlineData("2600 MM", 2_600_000_000)]
    [InlineData("60 cm", 600_000_000)]
    [InlineData("2.6 m", 2_600_000_000)]
    [InlineData(".5 m", 500_000_000)]
    [InlineData("0.000001 mm", 1)]
    public void Every_way_of_writing_a_length_is_exact(string text, long nanometres)
        => Assert.Equal(nanometres, Read(text, "metric").Nanometres);

    [Theory]
    [InlineData("30", 762_000_000)]
    [InlineData("30 1/2", 774_700_000)]
    [InlineData("2'", 609_600_000)]
    [InlineData("600 mm", 600_000_000)]
    public void A_bare_number_in_a_feet_plan_is_inches(string text, long nanometres)
        => Assert.Equal(nanometres, Read(text, "feet").Nanometres);

    [Fact]
    public void Feet_inches_and_fractions_add_up_exactly()
        => Gen.Select(Gen.Int[0, 900], Gen.Int[0, 11], Gen.Int[0, 63]).Sample((feet, inches, sixtyFourths) =>
    {
        // Exact arithmetic of its own: 64ths of an inch times 25 400 000 nm.
        var exact = new BigInteger((((feet * 12) + inches) * 64) + sixtyFourths) * 25_400_000 / 64;
        return Read($"{feet}'-{inches} {sixtyFourths}/64\"", "metric").Nanometres == exact;
    });

    [Fact]
    public void A_length_can_follow_a_length_and_a_room_can_follow_in()
    {
        var tree = Sample.Parse("bin b in kill, 20 in x 20 in, 12 in from west, 3 in from south\nbin c in kill, 400 x 300 in lobby");
        var first = (StationStatement)tree.Statements[0];
        Assert.Equal(508, first.Value(StationDetails.Size)!.Width.Value.Millimetres);
        Assert.Equal(2, first.Place.Count);
        Assert.Equal(300, ((StationStatement)tree.Statements[1]).Value(StationDetails.Size)!.Depth!.Value.Millimetres);
    }

    private static Length Read(string text, string units)
    {
        var tree = Sample.Parse($"plan \"A\"\n  units {units}\npartitions thickness {text}\n");
        Assert.Empty(tree.Diagnostics);
        return tree.Statements.OfType<PartitionsStatement>().Single().Thickness!.Value;
    }
}
