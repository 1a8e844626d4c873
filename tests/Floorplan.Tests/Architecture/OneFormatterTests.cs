using System.Text.RegularExpressions;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>
/// Quantities are printed in one place. Elsewhere a unit may stand in fixed sentences, but not be put behind a number that is worked
/// out.
/// </summary>
public sealed partial class OneFormatterTests
{
    /// <summary>Other places where a figure meets a unit, each with its reason.</summary>
    private static readonly Dictionary<string, string> Allowed = new()
    {
        ["src/Floorplan.Drawing/Dxf/DxfWriter.cs"] = "a comment of the file format about its own unit",
        ["src/Floorplan.Model/Shells/Containers/ContainerSize.cs"] = "the trade names of boxes",
        ["src/Floorplan.Model/Binding/Reading/ShellReader.cs"] = "the trade names of boxes",
        ["src/Floorplan.Drawing/Dxf/DxfText.cs"] = "a sign that the file format would read as a code",
        ["src/Floorplan.Sizing/Lifting/LiftFigures.cs"] = "the lifting equation is in pounds and inches whatever the plan is in",
        ["src/Floorplan.Sizing/Lifting/LiftingEquation.cs"] = "the lifting equation is in pounds and inches whatever the plan is in",
        ["src/Floorplan.Model/Details/Tables/HeadTable.cs"] = "percentiles of people, a name and no quantity",
        ["src/Floorplan.Model/People.cs"] = "percentiles of people, a name and no quantity",
    };

    [Fact]
    public void No_other_place_puts_a_unit_behind_a_number() => Assert.Equal("", string.Join(
        '\n',
        Repository.Sources("src")
            .Select(f => (Path: Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'), Text: File.ReadAllText(f)))
            .Where(f => !f.Path.StartsWith("src/Floorplan.Language/Quantities/", StringComparison.Ordinal) && !Allowed.ContainsKey(f.Path))
            .SelectMany(f => Printed().Matches(f.Text).Select(m => $"{f.Path}: {m.Value}"))));

    [Fact]
    public void Conversions_to_inch_pound_units_are_printed_nowhere_else() => Assert.Empty(
        Repository.Sources("src")
            .Select(f => (Path: Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'), Text: File.ReadAllText(f)))
            .Where(f => !f.Path.StartsWith("src/Floorplan.Language/Quantities/", StringComparison.Ordinal))
            .SelectMany(f => Converted().Matches(f.Text).Select(m => $"{f.Path}: {m.Value}")));

    [Theory]
    [InlineData("x.ToString(\"0\") + \" kg\"")]
    [InlineData("$\"{size} m2, has\"")]
    [InlineData("$\"{watts / 1000:0.0} kW\"")]
    [InlineData("lux + \" lux\";")]
    public void Such_a_place_is_seen(string code) => Assert.Matches(Printed(), code);

    // A text that begins with a unit, or a hole of an interpolated text with a unit after it.
    [GeneratedRegex(
        @"(?:""|(?<! )\}) (?:mm|cm|m|m2|m²|m3|m³|kg|lb|g|t|L|gal|L/min|L/h|L/s|"
        + @"gpm|m3/h|m³/h|cfm|°?C|°?F|K|W|kW|Btu/h|kWh|V|A|lux|fc|bar|psi|m/s|%|sq ft|cu ft|ft|changes/h)"
        + @"(?=["" ,.;)}])(?! (?:full|empty)\b)")]
    private static partial Regex Printed();

    [GeneratedRegex(@"/ InchPound\.[^;]*ToString|InchPound\.Fahrenheit\(")]
    private static partial Regex Converted();
}
