using Floorplan.Model;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Parsing;

/// <summary>Where a unit stands, what it makes and whose plant it is. Countries by ISO 3166-1 and -2, from memory.</summary>
public sealed class PlaceWordTests
{
    [Theory]
    [InlineData("country de", CodeChoice.Eu, "de")]
    [InlineData("country us-wa", CodeChoice.Us, "us-wa")]
    [InlineData("country uk", CodeChoice.Eu, "uk")]
    [InlineData("country ZA", CodeChoice.None, "za")]
    [InlineData("country za, code eu", CodeChoice.Eu, "za")]
    [InlineData("code us", CodeChoice.Us, "")]
    [InlineData("plant milk", CodeChoice.Us, "")]
    [InlineData("number A", CodeChoice.None, "")]
    public void A_country_says_the_code_too(string head, CodeChoice code, string country)
    {
        var plan = Plan(head);
        Assert.Equal((code, country), (plan.Head.Code, plan.Head.Country));
    }

    [Fact]
    public void Trades_are_read_in_any_number_and_once_each()
        => Assert.Equal([Trade.Poultry, Trade.RedMeat], Plan("trade poultry, Red Meat, poultry, number A").Head.Trades);

    [Theory]
    [InlineData("country germany", "unknown-word", "`de` (Germany)")]
    [InlineData("country gb", "unknown-word", "`uk` (United Kingdom)")]
    [InlineData("country us-xx", "unknown-word", "`us-wa`")]
    [InlineData("country nowhere-at-all", "unknown-word", "two letters, such as `de`")]
    [InlineData("trade meat", "unknown-word", "`red meat`")]
    [InlineData("trade poultry, diary", "unknown-word", "`dairy`")]
    [InlineData("plant retial", "unknown-word", "`retail`")]
    [InlineData("country de\n  code us", "country-not-of-code", "`code eu`")]
    [InlineData("country us-wa\n  code none", "country-not-of-code", "`code us`")]
    [InlineData("country za\n  code us", "country-not-of-code", "`code none`")]
    [InlineData("code eu\n  plant food", "plant-not-us", "`code us`")]
    [InlineData("country uk\n  plant retail", "plant-not-us", "`code us`")]
    public void A_slip_is_told_once_with_a_way_out(string head, string code, string hint)
    {
        var told = Assert.Single(Sample.Parse($"plan \"A\"\n  {head}").Diagnostics);
        Assert.Equal(code, told.Code);
        Assert.Contains(hint, told.Help, StringComparison.Ordinal);
    }

    private static Floorplan.Model.Plan Plan(string head)
        => CheckedPlan.Plan($"plan \"A\"\n  {head}\nshell shed 6 m x 3 m x 2.5 m\nroom one \"One\" clean from west to east");
}
