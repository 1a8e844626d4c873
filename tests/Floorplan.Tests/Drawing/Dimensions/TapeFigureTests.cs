using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Language.Quantities;
using Floorplan.Tests.Drawing.Support;
using Floorplan.Tests.Outside;
using Xunit;

namespace Floorplan.Tests.Drawing.Dimensions;

/// <summary>
/// A person measures with a tape: whole millimetres, or 1/8 in; the welder has 1/16 in. And adds up what a chain prints. Over all
/// templates, plans of the gallery and invented ones, in metric and in feet, as printed. Findings are finer: they judge by what the plan
/// says.
/// </summary>
public sealed partial class TapeFigureTests
{
    /// <summary>Columns of places and sizes, on whichever sheet.</summary>
    private static readonly HashSet<string> Measured =
    [
        "Wide × deep × high", "From west, south", "Wide × high", "Sill", "Wall, place", "Work at", "Top", "Under", "Keep clear", "X", "Y",
        "Along", "Up", "Radius", "In its room", "Length", "Left", "Air gap",
    ];

    /// <summary>
    /// Tables are read from what the sheet says. The legend has a limit, which is printed as findings print it; pipes are bought by size.
    /// </summary>
    private static readonly string[] Elsewhere = [Layers.Schedule, Layers.TitleBlock, Layers.Marks, Layers.Legend, Layers.Water];

    public static TheoryData<string> Plans => [.. AllPlans.All];

    [Theory, MemberData(nameof(Plans))]
    public void Every_printed_chain_adds_up_to_the_overall_figure(string plan)
    {
        var texts = DrawnPlans.Set(plan).OfSheet(1).Texts().Where(t => t.Layer == Layers.Dimensions && t.Group is not null).ToList();
        foreach (bool upright in new[] { false, true })
        {
            var along = texts.Where(t => t.Degrees != 0 == upright).ToList();
            double inside = Assert.Single(along.Where(t => t.Group == "dimension:inside").Select(Mm).Distinct());
            Assert.All(
                along.Where(t => Chain().IsMatch(t.Group!)).GroupBy(t => t.Group),
                row => Assert.True(
                    Math.Abs(row.Sum(Mm) - inside) < 0.001, $"{row.Key}: {string.Join(" + ", row.Select(t => t.Text))} is not {inside}"));
        }
    }

    /// <summary>Thirty-one short stretches in one row: a figure that finds no room would be missing in the sum.</summary>
    [Fact]
    public void A_tight_chain_has_all_its_figures() => Every_printed_chain_adds_up_to_the_overall_figure("invented 69");

    [Theory, MemberData(nameof(Plans))]
    public void No_dimension_is_finer_than_a_tape(string plan)
    {
        var request = DrawnPlans.Request(AllPlans.Text(plan));
        bool metric = request.Plan.Units == UnitSystem.Metric;
        var pages = DrawnPlans.Set(plan);
        var finer = new List<string>();
        foreach (var (sheet, content) in SheetSet.All.Zip(SheetSet.Contents(request)).Where(s => s.First.Number < 9))
        {
            var texts = pages.OfSheet(sheet.Number).Texts().ToList();
            string[] findings = [.. content.Findings.Select(f => $"{f.Severity}: {f.Text}")];
            var drawn = texts.Where(t => !Elsewhere.Contains(t.Layer))
                .Where(t => !Array.Exists(findings, f => f.Contains(t.Text, StringComparison.Ordinal)));
            var said = drawn.Select(t => t.Text).Concat(content.Notes)
                .Concat(content.Tables.SelectMany(Cells).Select(c => c.Text));
            finer.AddRange(
                said.Where(t => metric ? Decimal().IsMatch(t) : sheet.Number != 6 && Sixteenth().IsMatch(t))
                    .Select(t => $"sheet {sheet.Number}: {t}"));
            if (metric)
            {
                finer.AddRange(
                    texts.Where(t => t.Layer == Layers.Dimensions).Select(t => t.Text)
                        .Concat(content.Tables.SelectMany(Cells).Where(c => Measured.Contains(c.Column)).Select(c => c.Text))
                        .Where(t => AnyDecimal().IsMatch(t)).Select(t => $"sheet {sheet.Number}: {t}"));
            }
        }

        Assert.True(finer.Count == 0, string.Join('\n', finer.Distinct()));
    }

    /// <summary>
    /// By hand: the faces at 2100.4 and the rack at 2400.7 are printed as places 2100 and 2401, so the row has 301 between them, though
    /// they are 300.3 apart.
    /// </summary>
    [Fact]
    public void The_key_says_what_the_row_says()
    {
        var sheet = DrawnPlans.Draw(
            """
            plan "Two rooms"
              units metric
            shell container 20 ft high-cube
              lining walls 50, ceiling 50, floor 50
              doors east
            room a "A" dry from west to 2000.4
            room b "B" dry from 2100.4 to east
            station rack "Rack" in b
              size 450 x 600.4 x 1800
              place at 300.3, 120
            """, [1]);
        Assert.Contains("301", sheet.Texts().Where(t => t.Group == "dimension:stations:S").Select(t => t.Text));
        Assert.Contains("301, 120", sheet.Texts().Select(t => t.Text));
        Assert.Contains("450×600×1800", sheet.Texts().Select(t => t.Text));
    }

    [Theory]
    [InlineData("empty-start", 1, "Dimensions are rounded to whole millimetres; chains add up as printed, so one figure may be 1 mm off.")]
    [InlineData("empty-start", 6, "Dimensions are rounded to whole millimetres, each by itself, so a difference of two may be 1 mm off.")]
    [InlineData("empty-start", 7, "Dimensions are rounded to whole millimetres, each by itself, so a difference of two may be 1 mm off.")]
    [InlineData("poultry-40ft", 1, "Dimensions are rounded to 1/8 in; chains add up as printed, so one figure may be 1/8 in off.")]
    [InlineData("poultry-40ft", 4, "Dimensions are rounded to 1/8 in.")]
    [InlineData("poultry-40ft", 6, "Dimensions are rounded to 1/16 in, each by itself, so a difference of two may be 1/16 in off.")]
    [InlineData("poultry-40ft", 8, "Dimensions are rounded to 1/8 in.")]
    public void The_notes_say_the_rule(string template, int sheet, string rule)
        => Assert.Contains(rule, SheetSet.Contents(DrawnPlans.Request(DrawnPlans.Text(template)))[sheet - 1].Notes);

    private static double Mm(TextItem text) => PrintedDimension.Parse(text.Text);

    /// <summary>What is bought by its size keeps it: a pipe, and the thickness of a lining in the table of weights.</summary>
    private static IEnumerable<(string Column, string Text)> Cells(KeyTable table)
        => table.Title == "Weights" ? [] : table.Rows.Where(r => r.Count == table.Columns.Count)
            .SelectMany(r => r.Select((c, i) => (Column: table.Columns[i], c.Text)))
            .Where(c => c.Column != "Size");

    /// <summary>Other quantities than lengths are whole from 100 on.</summary>
    [GeneratedRegex(@"\d{3}\.\d")]
    private static partial Regex Decimal();

    [GeneratedRegex(@"\d\.\d")]
    private static partial Regex AnyDecimal();

    /// <summary>A scale has an equals sign after it.</summary>
    [GeneratedRegex("""/16"(?! =)""")]
    private static partial Regex Sixteenth();

    [GeneratedRegex("^dimension:(openings|stations|rooms|corners):")]
    private static partial Regex Chain();
}
