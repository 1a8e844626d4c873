using System.Text.Json;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dxf;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Cli;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>
/// The DXF of the plan sheets of a set, opened by ezdxf and laid over each other: walls, stations and doors are the same lines at the same
/// coordinates, and those are the plan's own, from the steel datum.
/// </summary>
public class DxfOverlayTests
{
    private const double Near = 0.01;

    private const string Read = """
        import sys, json, ezdxf
        from ezdxf.colors import aci2rgb
        out = []
        for name in sys.argv[1:]:
            doc = ezdxf.readfile(name)
            faults = doc.audit()
            layers = {l.dxf.name: [l.dxf.color, l.dxf.linetype] for l in doc.layers}
            shapes, texts, colours = {}, {}, {}
            for e in doc.modelspace():
                colour = e.dxf.get("color", 256)
                colour = layers[e.dxf.layer][0] if colour == 256 else colour
                if e.dxftype() == "TEXT":
                    at = e.dxf.align_point if e.dxf.halign else e.dxf.insert
                    texts.setdefault(e.plain_text(), []).append([*tuple(at)[:2], colour])
                else:
                    colours.setdefault(colour, list(aci2rgb(colour)))
                if e.dxftype() == "POLYLINE":
                    shapes.setdefault(e.dxf.layer, []).append([c for p in e.points() for c in tuple(p)[:2]])
            out.append({"faults": len(faults.errors) + len(faults.fixes), "layers": layers, "shapes": shapes, "texts": texts,
                        "colours": colours, "types": sorted(l.dxf.name for l in doc.linetypes)})
        print(json.dumps(out))
        """;

    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [SkippableTheory, MemberData(nameof(Templates))]
    public void Plan_sheets_lie_over_each_other_on_the_datum(string template)
    {
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template + ".unit")));
        using var read = Sheets(template, s => s.Items.Any(i => i.Group == "wall:shell"));
        var pages = read.RootElement.EnumerateArray().ToList();
        Assert.All(pages, s => Assert.Equal(0, s.GetProperty("faults").GetInt32()));

        // Parts of a long plan are laid together as the files have them.
        var sheets = DrawnPlans.Template(template).Where(s => s.Items.Any(i => i.Group == "wall:shell")).Zip(pages)
            .GroupBy(p => p.First.Sheet, p => p.Second).Select(s => s.ToList()).ToList();
        Assert.True(sheets.Count >= 5, $"{sheets.Count} plans");

        // The steel of the walls: its outside begins at 0, 0, and is where the plan says.
        var outside = plan.Shell.Outside.EnvelopeInternal;
        double[] size = [0, 0, outside.Width, outside.Height];
        Assert.All(sheets, s => Same(size, Extent(s.SelectMany(p => Shapes(p, Layers.Wall)))));

        // Every station that the plan places, on every sheet: item for item the same rectangle.
        foreach (var station in plan.Stations.Where(s => s.Diameter is null))
        {
            var (datum, box) = (plan.Shell.Datum, station.Bounds);
            double[] expected =
            [
                (box.West - datum.X).Millimetres, (box.South - datum.Y).Millimetres, (box.East - datum.X).Millimetres,
                (box.North - datum.Y).Millimetres,
            ];
            Assert.All(
                sheets, s => Assert.True(
                    Outlines(s).Any(o => IsNear(expected, o)),
                    $"{template}: {station.Id} is not where the plan has it"));
        }
    }

    /// <summary>Of every item, and of every two that two parts of the plan have of it.</summary>
    private static IEnumerable<double[]> Outlines(List<JsonElement> parts)
    {
        var shapes = parts.Select(p => Shapes(p, Layers.Equipment)).ToList();
        return shapes.SelectMany(s => s).Select(s => Extent([s]))
            .Concat(shapes.Zip(shapes.Skip(1)).SelectMany(p => p.First.SelectMany(a => p.Second.Select(b => Extent([a, b])))));
    }

    [SkippableTheory, MemberData(nameof(Templates))]
    public void Walls_unrolled_and_elevations_have_their_own_datum_at_the_origin(string template)
    {
        var sheets = DrawnPlans.Template(template).Where(s => s.Sheet is 6 or 7 && s.Items.Any(i => i.Group == "wall")).ToList();
        Assert.Contains(sheets, s => s.Sheet == 6);
        Assert.Contains(sheets, s => s.Sheet == 7);
        Assert.All(sheets, s => Assert.NotNull(s.Datum));
        using var read = Sheets(template, s => s == sheets[0]);
        Assert.True(Shapes(read.RootElement[0], Layers.Wall).Concat(Shapes(read.RootElement[0], Layers.Frame))
            .Any(s => Touches(Extent([s]))), "no wall has a corner at 0, 0");

        static bool Touches(double[] box)
            => (Math.Abs(box[0]) < Near || Math.Abs(box[2]) < Near) && (Math.Abs(box[1]) < Near || Math.Abs(box[3]) < Near);
    }

    /// <summary>WCAG 2 asks 3 to 1 of graphics; the grounds are paper, and the usual two of screens.</summary>
    [SkippableTheory, MemberData(nameof(Templates))]
    public void Everything_is_seen_on_dark_and_on_light(string template)
    {
        const int TurnsWithTheGround = 7;
        const double Least = 3;
        string[] safety = ["#F9A800"];
        using var read = Sheets(template, _ => true);
        int[] signs = [.. safety.Select(DxfColour.Nearest)];
        foreach (var sheet in read.RootElement.EnumerateArray())
        {
            foreach (var colour in sheet.GetProperty("colours").EnumerateObject()
                .Where(c => int.Parse(c.Name) is var n && n != TurnsWithTheGround && !signs.Contains(n)))
            {
                string rgb = "#" + string.Concat(colour.Value.EnumerateArray().Select(v => v.GetInt32().ToString("X2")));
                Assert.All(
                    new[] { "#FFFFFF", "#000000", "#212830" }, ground
                        => Assert.True(TextContrast.Between(rgb, ground) >= Least, $"colour {colour.Name}, {rgb}, on {ground}"));
            }

            // Captions turn with the ground; what stands on a safety colour is dark on any.
            foreach (var text in sheet.GetProperty("texts").EnumerateObject())
            {
                Assert.All(text.Value.EnumerateArray(), t => Assert.Equal(text.Name == "!" ? 250 : TurnsWithTheGround, t[2].GetInt32()));
            }
        }
    }

    /// <summary>A file of another sheet brings no second meaning of a name.</summary>
    [SkippableFact]
    public void Layers_and_line_types_mean_the_same_in_all_files_of_a_set()
    {
        using var read = Sheets("goat-dairy-shed", s => s.Sheet <= 5);
        var layers = read.RootElement.EnumerateArray().SelectMany(s => s.GetProperty("layers").EnumerateObject())
            .GroupBy(l => l.Name, l => l.Value.GetRawText());
        Assert.All(layers, l => Assert.Single(l.Distinct()));
        var looks = layers.ToDictionary(l => l.Key, l => l.First());
        Assert.StartsWith("[142", looks[Layers.Water]);
        Assert.StartsWith("[8", looks[Layers.WallHatch]);
        Assert.StartsWith("[7", looks[Layers.Wall]);
        string[] types =
            [.. read.RootElement.EnumerateArray().SelectMany(s => s.GetProperty("types").EnumerateArray()).Select(t => t.GetString()!)];
        Assert.All(
            types.Where(t => t.Contains('-', StringComparison.Ordinal)), t
                => Assert.Matches("^(DASHED|DASH-DOT|DASH-2DOT|DOTTED)-[0-9]{3}-[0-9]+$", t));
        Assert.Equal("DASH-2DOT-025", JsonDocument.Parse(looks[Layers.EquipmentClear]).RootElement[1].GetString()![..13]);
    }

    private static JsonDocument Sheets(string template, Func<SheetScene, bool> which)
    {
        string python = Readers.PythonWith("ezdxf");
        using var folder = new TemporaryFolder();
        string[] files =
        [
            .. DrawnPlans.Template(template).Where(which)
                .Select(s => folder.Write(s.Name + ".dxf", DxfWriter.Write(s))),
        ];
        return JsonDocument.Parse(Readers.Run(python, ["-c", Read, .. files]).Out);
    }

    private static List<double[]> Shapes(JsonElement sheet, string layer)
        => sheet.GetProperty("shapes").TryGetProperty(layer, out var shapes)
            ? [.. shapes.EnumerateArray().Select(s => s.EnumerateArray().Select(v => v.GetDouble()).ToArray())]
            : [];

    private static double[] Extent(IEnumerable<double[]> shapes)
    {
        double[] all = [.. shapes.SelectMany(s => s)];
        var x = all.Where((_, i) => i % 2 == 0).ToList();
        var y = all.Where((_, i) => i % 2 == 1).ToList();
        return x.Count == 0 ? [] : [x.Min(), y.Min(), x.Max(), y.Max()];
    }

    private static void Same(double[] expected, double[] found) => Assert.True(
        IsNear(expected, found), $"expected {string.Join(", ", expected)}, found {string.Join(", ", found)}");

    private static bool IsNear(double[] expected, double[] found)
        => expected.Length == found.Length && expected.Zip(found).All(p => Math.Abs(p.First - p.Second) < Near);
}
