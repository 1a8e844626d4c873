using System.Text.RegularExpressions;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>One name has one meaning, whatever the project.</summary>
public sealed partial class NameTests
{
    [Fact]
    public void No_two_types_have_one_name() => Assert.Equal("", string.Join(
        '\n',
        Repository.Sources("src")
            .Select(File.ReadAllText)
            .SelectMany(text => Type().Matches(text)
                .Select(m => (Name: m.Groups["name"].Value, Space: Space().Match(text).Groups["name"].Value)))
            .Distinct()
            .GroupBy(t => t.Name)
            .Where(g => g.Count() > 1)
            .Select(g => $"{g.Key} is in {string.Join(" and in ", g.Select(t => t.Space))}")));

    /// <summary>A rule is found by its name in the catalogue, so nobody needs its class.</summary>
    [Fact]
    public void Rules_are_internal() => Assert.Empty(
        Repository.Sources("src/Floorplan.Checks/Rules").Where(f => File.ReadAllText(f).Contains("\npublic ", StringComparison.Ordinal))
            .Select(Path.GetFileName));

    [Fact]
    public void What_is_hidden_is_said_once() => Assert.Equal(
        ["HiddenCharacters.cs"],
        Repository.Sources("src").Where(f => File.ReadAllText(f).Contains("UnicodeCategory.Format", StringComparison.Ordinal))
            .Select(Path.GetFileName));

    [GeneratedRegex(
        @"^(?:public |internal )?(?:static |sealed |abstract |partial |readonly )*"
        + @"(?:class|record struct|record|struct|enum|interface) (?<name>\w+)",
        RegexOptions.Multiline)]
    private static partial Regex Type();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+)", RegexOptions.Multiline)]
    private static partial Regex Space();
}
