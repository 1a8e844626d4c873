using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing;

/// <summary>What sheets say by colour they say without it too, and text stands out from what is under it.</summary>
public class GreyscaleTests
{
    /// <summary>Lightness L* of CIE 1976, 0 to 100; two neighbouring greys nearer than this are taken for one. Own assumption.</summary>
    private const double LeastStep = 8;

    private const string EveryClass = """
        plan "A room of every class"
        shell shed 21000 x 5000 x 2600
        room a "A" dirty  from west to 3000
        room b "B" clean  from 3000 to 6000
        room c "C" cold   from 6000 to 9000
        room d "D" dry    from 9000 to 12000
        room e "E" staff  from 12000 to 15000
        room f "F" plant  from 15000 to 18000
        room g "G" toilet from 18000 to east

        """;

    private static readonly string[] Runs = [Layers.Flow, Layers.Water, Layers.Drainage];

    public static TheoryData<string> Plans => [.. DrawnPlans.Templates, "every class"];

    [Theory, MemberData(nameof(Plans))]
    public void Text_stands_out_from_the_areas_under_it(string plan)
    {
        foreach (var sheet in Sheets(plan))
        {
            Assert.Empty(TextContrast.Faults(sheet));
        }
    }

    /// <summary>Floors of two classes: other lines, other pitch, or dots. Measured from the lines that were drawn.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Floors_of_different_classes_are_told_apart_by_their_hatch_and_letter(string name)
    {
        var plan = CheckedPlan.Plan(Text(name));
        foreach (var sheet in Sheets(name).Where(s => s.Items.Any(i => i.Layer == Layers.FloorHatch)))
        {
            // A part of a long plan has some of the rooms.
            var rooms = plan.Rooms.Where(r => sheet.Items.Any(i => i.Layer == Layers.FloorHatch && i.Group == "room:" + r.Id)).ToList();
            var hatches = rooms.ToDictionary(r => r, r => HatchOf(sheet, "room:" + r.Id));
            foreach (var (a, b) in rooms.SelectMany((a, i) => rooms.Skip(i + 1).Select(b => (a, b))))
            {
                Assert.True(
                    hatches[a] == hatches[b] == (a.Class == b.Class),
                    $"{sheet.Name}: {a.Label}, {a.Class}, is hatched {hatches[a]}, and {b.Label}, {b.Class}, {hatches[b]}");
            }
        }

        foreach (var pages in Sheets(name).Where(s => s.Items.Any(i => i.Layer == Layers.FloorHatch)).GroupBy(s => s.Sheet))
        {
            Assert.All(
                plan.Rooms, r =>
                {
                    Assert.Contains(pages.Items<LineItem>(), l => l.Layer == Layers.FloorHatch && l.Group == "room:" + r.Id);
                    Assert.Contains(pages.Texts(), t => t.Group == "room:" + r.Id && t.Text == ZoneLook.Of(r.Class).Letter);
                });
        }
    }

    /// <summary>
    /// All areas but floors, which have hatches, and the arrowheads of streams and pipes, whose lines differ by dash; the legend
    /// repeats them.
    /// </summary>
    [Theory, MemberData(nameof(Plans))]
    public void Areas_of_different_colours_are_different_greys(string plan)
    {
        string[] byOtherMeans = [Layers.Floor, Layers.Legend, .. Runs];
        foreach (var sheet in Sheets(plan))
        {
            string[] colours =
                [.. sheet.Items.OfType<AreaItem>().Where(a => !byOtherMeans.Contains(a.Layer)).Select(a => a.Fill).Distinct()];
            foreach (var (a, b) in colours.SelectMany((a, i) => colours.Skip(i + 1).Select(b => (a, b))))
            {
                Assert.True(
                    Math.Abs(TextContrast.Lightness(a) - TextContrast.Lightness(b)) >= LeastStep,
                    $"{sheet.Name}: {a} and {b} are alike in grey: L* {TextContrast.Lightness(a):0} and {TextContrast.Lightness(b):0}");
            }
        }
    }

    /// <summary>Routes and pipes of two colours on one sheet have two dash patterns.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Runs_of_different_colours_are_different_lines(string plan)
    {
        foreach (var sheet in Sheets(plan))
        {
            var pens = sheet.Items.Where(i => Runs.Contains(i.Layer))
                .Select(i => i switch { LineItem line => line.Pen, PolylineItem line => line.Pen, _ => null })
                .Where(p => p?.Width >= DrawingStandard.Iso.Wide).Select(p => (p!.Colour, Dash: string.Join(' ', p.Dash ?? []))).Distinct()
                    .ToList();
            Assert.Equal(pens.Select(p => p.Colour).Distinct().Count(), pens.Select(p => p.Dash).Distinct().Count());
        }
    }

    [Fact]
    public void Streams_are_told_apart_by_line_and_letter()
    {
        var looks = Enum.GetValues<Floorplan.Model.Flows.Stream>().Select(StreamLook.Of).ToList();
        Assert.Equal(looks.Count, looks.Select(l => l.Letter).Distinct().Count());
        Assert.Equal(looks.Count, looks.Select(l => string.Join(' ', l.Pen.Dash ?? [])).Distinct().Count());
    }

    /// <summary>Worked values of WCAG's definition: black on white 21:1, and #767676 the lightest grey that passes on white.</summary>
    [Theory]
    [InlineData("#000000", "#FFFFFF", 21)]
    [InlineData("#767676", "#FFFFFF", 4.54)]
    [InlineData("#777777", "#FFFFFF", 4.48)]
    public void Contrast_is_measured_as_defined(string a, string b, double contrast)
        => Assert.Equal(contrast, TextContrast.Between(a, b), 0.01);

    private static string Text(string plan)
        => plan == "every class" ? EveryClass : File.ReadAllText(Architecture.Repository.At("templates", plan + ".unit"));

    private static IReadOnlyList<SheetScene> Sheets(string plan)
        => plan == "every class" ? DrawnPlans.Draw(EveryClass) : DrawnPlans.Template(plan);

    /// <summary>Directions of the lines, how far they lie apart, and whether they are dots.</summary>
    private static string HatchOf(SheetScene sheet, string group)
    {
        var lines = sheet.Items.OfType<LineItem>().Where(l => l.Layer == Layers.FloorHatch && l.Group == group).ToList();
        var directions = lines.Select(l => Math.Round(Math.Atan2(l.From.Y - l.To.Y, l.To.X - l.From.X) * 180 / Math.PI + 360) % 180)
            .GroupBy(d => d).Where(g => g.Count() * 10 >= lines.Count).Select(g => g.Key).Order().ToList();
        bool dots = lines.Count > 0 && lines.Average(l => Math.Abs(l.To.X - l.From.X) + Math.Abs(l.To.Y - l.From.Y)) < 0.5;
        double angle = directions.FirstOrDefault() * Math.PI / 180;
        double[] offsets =
            [.. lines.Where(l => directions.Count > 0)
                .Select(l => Math.Round((l.From.X * Math.Sin(angle)) + (l.From.Y * Math.Cos(angle)), 2)).Distinct().Order()];
        double pitch = directions.Count > 1 ? 0 : offsets.Zip(offsets.Skip(1), (a, b) => b - a).Where(d => d > 0.1).DefaultIfEmpty(0).Min();
        return string.Create(CultureInfo.InvariantCulture, $"{(dots ? "dots" : "lines")} {string.Join('+', directions)} every {pitch:0.0}");
    }
}
