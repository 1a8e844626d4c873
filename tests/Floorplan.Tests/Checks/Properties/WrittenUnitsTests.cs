using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>
/// A length is a length in whatever unit it is written (1 in is 25.4 mm, exactly, by the international agreement of 1959).
/// </summary>
public sealed partial class WrittenUnitsTests
{
    [Theory]
    [InlineData("poultry-40ft.unit")]
    [InlineData("game-trailer.unit")]
    public void Inches_written_as_millimetres_change_no_finding(string template)
    {
        string plan = File.ReadAllText(Repository.At("templates", template));
        string metric = Inches().Replace(plan, m => Millimetres(m, 25.4m));
        metric = Feet().Replace(metric, m => Millimetres(m, 304.8m));
        Assert.DoesNotMatch(Inches(), metric);
        Assert.NotEqual(plan, metric);

        var before = CheckedPlan.Check(plan);
        Assert.NotEmpty(before);
        Assert.Equal(before.Select(f => f.Message), CheckedPlan.Check(metric).Select(f => f.Message));
    }

    private static string Millimetres(Match number, decimal each) =>
        (decimal.Parse(number.Groups[1].Value, CultureInfo.InvariantCulture) * each).ToString("0.####", CultureInfo.InvariantCulture)
            + " mm";

    [GeneratedRegex(@"(?<![\d/.])(\d+(?:\.\d+)?) in\b(?! +[a-z])")]
    private static partial Regex Inches();

    [GeneratedRegex(@"(?<=(?:from|to) )(\d+(?:\.\d+)?) ft\b")]
    private static partial Regex Feet();
}
