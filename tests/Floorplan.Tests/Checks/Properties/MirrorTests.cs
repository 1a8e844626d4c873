using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Checks.Framework;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>A plan seen in a mirror has the same faults: every north is a south, and the other way round.</summary>
public sealed partial class MirrorTests
{
    // Coordinates, paths and corner lists are counted from the south-west corner, which the mirror moves; such plans are left out.
    public static TheoryData<string> Rules
        => [.. RuleCatalogue.All.Where(r => !Coordinates().IsMatch(r.Bad) && Compass().IsMatch(r.Bad)).Select(r => r.Name)];

    public static TheoryData<string> Templates =>
    [
        .. Directory.EnumerateFiles(Repository.At("templates"), "*.unit").Where(f => !Coordinates().IsMatch(File.ReadAllText(f)))
            .Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void Most_plans_can_be_mirrored()
    {
        Assert.True(Rules.Count > RuleCatalogue.All.Count / 2, $"only {Rules.Count} rules");
        Assert.True(Templates.Count >= 3, $"only {Templates.Count} templates");
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_bad_example_of_a_rule(string rule) => AssertSame(RuleCatalogue.Find(rule)!.Bad);

    [Theory]
    [MemberData(nameof(Templates))]
    public void A_template(string template) => AssertSame(File.ReadAllText(Repository.At("templates", template)));

    private static void AssertSame(string plan)
    {
        Assert.NotEqual(plan, Mirrored(plan));
        Assert.Equal(string.Join('\n', Found(plan)), string.Join('\n', Found(Mirrored(plan))));
    }

    private static IEnumerable<string> Found(string plan) => CheckedPlan.Check(plan)
        .Select(f => string.Create(
            CultureInfo.InvariantCulture,
            $"{f.Rule} {f.Severity} {f.AcceptedBy is not null} {string.Join(' ', f.Things.Order(StringComparer.Ordinal))} {f.Measured:0}"))
        .Order(StringComparer.Ordinal);

    private static string Mirrored(string plan) => Compass().Replace(plan, m => m.Value == "north" ? "south" : "north");

    [GeneratedRegex(@"\b(north|south)\b")]
    private static partial Regex Compass();

    [GeneratedRegex(@"\bat \d|corners |\bpath |^\s+(at|area|place) +\d+[^,]*, *\d[^a-z]*$", RegexOptions.Multiline)]
    private static partial Regex Coordinates();
}
