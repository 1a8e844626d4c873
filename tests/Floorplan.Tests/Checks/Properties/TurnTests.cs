using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Checks.Framework;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>A plan turned half round has the same faults: its west end is the east end, its north wall the south wall.</summary>
public sealed partial class TurnTests
{
    public static TheoryData<string> Rules => [.. RuleCatalogue.All.Where(r => CanBeTurned(r.Bad)).Select(r => r.Name)];

    public static TheoryData<string> Templates =>
    [
        .. Directory.EnumerateFiles(Repository.At("templates"), "*.unit").Where(f => CanBeTurned(File.ReadAllText(f)))
            .Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void Most_plans_can_be_turned()
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

    [Fact]
    public void A_plan_turned_twice_is_as_it_was()
    {
        string plan = RuleCatalogue.Find("aisle-too-narrow")!.Bad;
        Assert.Equal(Found(plan), Found(Turned(Turned(plan))));
    }

    private static void AssertSame(string plan)
    {
        string turned = Turned(plan);
        Assert.NotEqual(plan, turned);
        Assert.Equal(string.Join('\n', Found(plan)), string.Join('\n', Found(turned)));
    }

    private static IEnumerable<string> Found(string plan) => CheckedPlan.Check(plan)
        .Select(f => string.Create(
            CultureInfo.InvariantCulture,
            $"{f.Rule} {f.Severity} {f.AcceptedBy is not null} {string.Join(' ', f.Things.Order(StringComparer.Ordinal))} {f.Measured:0}"))
        .Order(StringComparer.Ordinal);

    private static bool CanBeTurned(string plan) => !Coordinates().IsMatch(plan) && Compass().IsMatch(plan);

    private static string Turned(string text)
    {
        var plan = CheckedPlan.Plan(text);
        string swapped = Compass()
            .Replace(text, m => m.Value switch { "north" => "south", "south" => "north", "east" => "west", _ => "east" });
        return Slice()
            .Replace(
                swapped, m
                    => $"from {Seen(plan, m.Groups["to"].Value, "east", "west")} to {Seen(plan, m.Groups["from"].Value, "west", "east")}");
    }

    /// <summary>A bound of a slice from the other end of the shell; the compass words of a slice are swapped already.</summary>
    private static string Seen(Plan plan, string bound, string end, string other)
    {
        if (bound is "west" or "east")
        {
            Assert.Equal(other, bound);
            return other == "west" ? "west" : "east";
        }

        var inside = plan.Shell!.Finished.EnvelopeInternal;
        decimal at = (decimal)(inside.MinX + inside.MaxX) - Millimetres(bound, plan.Units);
        Assert.NotEqual(end, bound);
        return at.ToString("0.######", CultureInfo.InvariantCulture) + " mm";
    }

    private static decimal Millimetres(string length, UnitSystem units)
    {
        var match = Number().Match(length);
        Assert.True(match.Success, length);
        return decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * match.Groups[2].Value switch
        {
            "mm" => 1,
            "m" => 1000,
            "in" => 25.4m,
            "ft" => 304.8m,
            _ => units == UnitSystem.Metric ? 1 : 25.4m,
        };
    }

    [GeneratedRegex(@"\b(north|south|east|west)\b")]
    private static partial Regex Compass();

    [GeneratedRegex(@"(?<=^room .*)\bfrom (?<from>[\w. ]+?) to (?<to>east|west|[\d.]+(?: ?(?:mm|m|in|ft)\b)?)", RegexOptions.Multiline)]
    private static partial Regex Slice();

    [GeneratedRegex(@"^([\d.]+) ?(\w*)$")]
    private static partial Regex Number();

    // Coordinates, paths and corner lists are counted from the south-west corner, which the turn moves; such plans are left out.
    [GeneratedRegex(@"\bat \d|corners |\bpath |^\s+(at|area|place) +\d+[^,]*, *\d[^a-z]*$", RegexOptions.Multiline)]
    private static partial Regex Coordinates();
}
