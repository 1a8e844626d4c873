using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Tests.Drawing.Support;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Drawing.Dimensions;

/// <summary>A welder adds up the figures of a row and gets the overall size.</summary>
public partial class DimensionTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory]
    [MemberData(nameof(Templates))]
    public void The_figures_of_every_full_chain_add_up_to_the_overall_figure_as_printed(string template)
    {
        var sheet = DrawnPlans.Template(template).OfSheet(1);
        var rows = sheet.Texts().Where(t => t.Layer == Layers.Dimensions && t.Group is not null)
            .GroupBy(t => t.Group!)
            .ToDictionary(g => g.Key, g => g.Sum(t => Sixteenths(t.Text)));
        Assert.True(rows.TryGetValue("dimension:inside", out double inside) && inside > 0);

        var chains = rows.Where(r => ChainName().IsMatch(r.Key)).ToList();
        Assert.NotEmpty(chains);
        var overall = sheet.Texts().Where(t => t.Group == "dimension:inside").Select(t => Sixteenths(t.Text)).ToList();
        Assert.All(chains, chain => Assert.Contains(overall, size => Math.Abs(size - chain.Value) < 0.001));
    }

    [Fact]
    public void Rounded_feet_never_lose_a_sixteenth_along_a_chain()
    {
        // 1.03 in between 24 stops: rounded one by one each prints 1 1/16 and the sum is 9/16 in too long.
        var set = new DimensionSet(new Envelope(0, 1000, 0, 500), Tape.ForSteel(UnitSystem.Feet), DrawingStandard.Us);
        DimensionStop[] stops =
            [.. Enumerable.Range(0, 25).Select(i => new DimensionStop(new Length((long)(i * 1.03 * Length.NanometresPerInch))))];
        set.Add(new DimensionRow(Side.South, DimensionForm.Chain, stops, "chain"));
        set.Add(new DimensionRow(Side.South, DimensionForm.Overall, stops, "overall"));
        var scene = new SceneBuilder();
        set.Draw(scene, new PlanTransform(4, new PaperPoint(50, 300)));

        double chain = scene.Items.OfType<TextItem>().Where(t => t.Group == "chain").Sum(t => Sixteenths(t.Text));
        double overall = scene.Items.OfType<TextItem>().Where(t => t.Group == "overall").Sum(t => Sixteenths(t.Text));

        Assert.Equal(Math.Round(24 * 1.03 * 16), overall);
        Assert.Equal(overall, chain);
    }

    /// <summary>Places 0.3 mm apart are one place to a tape: no stretch of 0, and no figure twice.</summary>
    [Theory]
    [InlineData(DimensionForm.Chain, "1000", "500")]
    [InlineData(DimensionForm.Running, "1000", "1500")]
    public void Places_that_a_tape_does_not_tell_apart_have_one_figure(DimensionForm form, params string[] figures)
    {
        var set = new DimensionSet(new Envelope(0, 1500, 0, 500), Tape.For(UnitSystem.Metric), DrawingStandard.Iso);
        set.Add(new DimensionRow(
            Side.South, form, [.. new[] { 0, 0.3, 1000, 1000.3, 1500 }.Select(p => new DimensionStop(Length.FromMillimetres(p)))], "row"));
        var scene = new SceneBuilder();
        set.Draw(scene, new PlanTransform(10, new PaperPoint(50, 300)));
        Assert.Equal(figures, scene.Items.OfType<TextItem>().Select(t => t.Text));
    }

    [Theory]
    [InlineData(Side.North)]
    [InlineData(Side.South)]
    [InlineData(Side.East)]
    [InlineData(Side.West)]
    public void Figures_of_tight_rows_keep_clear_of_each_other_and_of_their_strokes(Side side)
    {
        // Unequal short stretches, as thin partitions and narrow gaps give, in five rows.
        var set = new DimensionSet(new Envelope(0, 6000, 0, 6000), Tape.For(UnitSystem.Metric), DrawingStandard.Iso);
        var random = new Random(7);
        for (int row = 0; row < 5; row++)
        {
            long[] widths = [.. Enumerable.Range(0, 14).Select(_ => (long)random.Next(40, 700))];
            var along = widths.Select((_, i) => Length.FromMillimetres(widths.Take(i).Sum()));
            set.Add(new DimensionRow(side, DimensionForm.Chain, [.. along.Select(a => new DimensionStop(a))], $"row {row}"));
        }

        var scene = new SceneBuilder();
        set.Draw(scene, new PlanTransform(50, new PaperPoint(100, 250)));

        var texts = scene.Items.OfType<TextItem>().Select(TextMeasure.Box).ToList();
        Assert.Equal(5 * 13, texts.Count);
        for (int i = 0; i < texts.Count; i++)
        {
            Assert.DoesNotContain(texts.Skip(i + 1), t => t.Overlaps(texts[i]));
        }

        var heavy = scene.Items.OfType<LineItem>().Where(l => l.Pen.Width >= DrawingStandard.Iso.HeavyFrom).ToList();
        Assert.NotEmpty(heavy);
        Assert.All(texts, t => Assert.DoesNotContain(heavy, l => t.IsCutBy(l.From, l.To)));
    }

    [GeneratedRegex("^dimension:(openings|stations|rooms):")]
    private static partial Regex ChainName();

    /// <summary>Feet and inches in sixteenths of an inch; millimetres as they are.</summary>
    private static double Sixteenths(string text)
    {
        if (!text.Contains('"'))
        {
            return double.Parse(text, CultureInfo.InvariantCulture);
        }

        var match = FeetInches().Match(text);
        Assert.True(match.Success, text);
        double Part(string name) => match.Groups[name] is { Success: true } g ? double.Parse(g.Value, CultureInfo.InvariantCulture) : 0;
        double fraction = match.Groups["over"].Success ? Part("part") / Part("over") : 0;
        return ((Part("feet") * 12) + Part("inches") + fraction) * 16;
    }

    [GeneratedRegex("""^((?<feet>\d+)'-)?(?<inches>\d+(?![\d/]))?( ?(?<part>\d+)/(?<over>\d+))?"$""")]
    private static partial Regex FeetInches();
}
