using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dxf;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Cli;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The DXF read by two programs that are not ours, ezdxf and GDAL: what is drawn is found again at its true place.</summary>
public class DxfReaderTests
{
    /// <summary>Of the thing drawn, mm.</summary>
    private const double Near = 0.01;

    private const string Read = """
        import sys, json, ezdxf
        from ezdxf import colors
        doc = ezdxf.readfile(sys.argv[1])
        faults = doc.audit()
        out = {"version": doc.dxfversion, "faults": [e.message for e in faults.errors + faults.fixes],
               "LINE": [], "CIRCLE": [], "ARC": [], "TEXT": [], "POLYLINE": [], "SOLID": []}
        for e in doc.modelspace():
            t = e.dxftype()
            if t == "LINE": v = [*tuple(e.dxf.start)[:2], *tuple(e.dxf.end)[:2]]
            elif t == "CIRCLE": v = [*tuple(e.dxf.center)[:2], e.dxf.radius]
            elif t == "ARC": v = [*tuple(e.dxf.center)[:2], e.dxf.radius, e.dxf.start_angle, e.dxf.end_angle]
            elif t == "TEXT":
                at = e.dxf.align_point if e.dxf.halign else e.dxf.insert
                v = [*tuple(at)[:2], e.dxf.height, e.dxf.rotation, ezdxf.decode_dxf_unicode(e.plain_text())]
            elif t == "POLYLINE": v = [c for p in e.points() for c in tuple(p)[:2]]
            elif t == "SOLID": v = [c for n in ("vtx0", "vtx1", "vtx2") for c in tuple(e.dxf.get(n))[:2]]
            else: raise SystemExit("unexpected " + t)
            assert e.dxf.layer in doc.layers and e.dxf.get("linetype", "CONTINUOUS") in doc.linetypes
            out[t].append(v)
        out["layers"] = [l.dxf.name for l in doc.layers]
        out["dashes"] = {l.dxf.name: [t.value for t in l.pattern_tags.tags if t.code == 49] for l in doc.linetypes}
        print(json.dumps(out))
        """;

    public static TheoryData<string> Templates => [.. Thoroughness.Slice(DrawnPlans.Templates, 6)];

    [SkippableTheory, MemberData(nameof(Templates))]
    public void Lines_circles_and_texts_are_found_again_at_their_places(string template)
    {
        string python = Readers.PythonWith("ezdxf");
        using var folder = new TemporaryFolder();
        foreach (var sheet in DrawnPlans.Template(template))
        {
            using var read = Json(python, folder.Write("a.dxf", DxfWriter.Write(sheet)));
            var found = read.RootElement;
            Assert.Equal("AC1009", found.GetProperty("version").GetString());
            Assert.Empty(found.GetProperty("faults").EnumerateArray());

            // The reader adds a layer of its own.
            Assert.All(
                found.GetProperty("layers").EnumerateArray().Select(l => l.GetString()).Where(l => l != "Defpoints"), l
                    => Assert.Matches("^[A-Z0-9$_-]{1,31}$", l));

            double[] At(PaperPoint p) => True(sheet, p);
            Same(found, "LINE", sheet.Items.OfType<LineItem>().Select(l => (double[])[.. At(l.From), .. At(l.To)]));
            Same(found, "POLYLINE", sheet.Items.OfType<PolylineItem>().Select(l => (double[])[.. l.Points.SelectMany(At)]));
            Same(
                found, "CIRCLE",
                sheet.Items.OfType<ArcItem>().Where(a => a.EndDegrees - a.StartDegrees >= 360)
                    .Select(a => (double[])[.. At(a.Centre), a.Radius * sheet.Denominator]));
            Same(found, "ARC", sheet.Items.OfType<ArcItem>().Where(a => a.EndDegrees - a.StartDegrees < 360)
                .Select(a => (double[])[
                    .. At(a.Centre), a.Radius * sheet.Denominator, (a.StartDegrees + 720) % 360, (a.EndDegrees + 720) % 360]));

            List<TextItem> texts = [.. sheet.Items.OfType<TextItem>()];
            Same(found, "TEXT", texts.Select(t => (double[])[.. At(t.At), t.CapHeight * sheet.Denominator, t.Degrees]), more: 1);
            Assert.Equal(
                texts.Select(t => InPlainLetters(t.Text)),
                found.GetProperty("TEXT").EnumerateArray().Select(t => t[4].GetString()).SkipLast(1));
            Assert.Contains("1 unit = 1 mm", found.GetProperty("TEXT").EnumerateArray().Last()[4].GetString());
        }
    }

    /// <summary>From the sheet's datum, or from its lower left corner, in millimetres of the thing drawn, up as y.</summary>
    private static double[] True(SheetScene sheet, PaperPoint at)
    {
        var origin = sheet.Datum ?? new PaperPoint(0, sheet.HeightMm);
        return [(at.X - origin.X) * sheet.Denominator, (origin.Y - at.Y) * sheet.Denominator];
    }

    /// <summary>Signs that R12 has no code for.</summary>
    private static string InPlainLetters(string text)
        => text.Replace('\u00D7', 'x').Replace('\u00B2', '2').Replace('\u00B3', '3').Replace('\u00A0', ' ')
            .Replace("\u2026", "...", StringComparison.Ordinal);

    /// <summary>Filled areas come as triangles that cover as much.</summary>
    [SkippableFact]
    public void Triangles_cover_what_dark_areas_cover()
    {
        string python = Readers.PythonWith("ezdxf");
        using var folder = new TemporaryFolder();
        PaperPoint[] outer = [new(10, 10), new(50, 10), new(50, 40), new(30, 20), new(10, 40)],
            hole = [new(14, 12), new(18, 12), new(18, 16), new(14, 16)];
        var sheet =
            new SheetScene(
                "x", "t", "d", 100, 100, [new AreaItem([outer, hole], "#404040", "A-WALL"), new AreaItem([outer], "#FFEEDD", "A-FLOR")],
                20);
        using var read = Json(python, folder.Write("a.dxf", DxfWriter.Write(sheet)));
        double covered = read.RootElement.GetProperty("SOLID").EnumerateArray()
            .Select(s => s.EnumerateArray().Select(n => n.GetDouble()).ToArray())
            .Sum(s => Math.Abs(((s[2] - s[0]) * (s[5] - s[1])) - ((s[4] - s[0]) * (s[3] - s[1]))) / 2);

        // Shoelace: the outer ring 40 x 30 less a notch of 40 x 20 / 2, the hole 4 x 4.
        Assert.Equal(((40 * 30) - (40 * 20 / 2) - 16) * 20 * 20, covered, Near);
    }

    [SkippableTheory]
    [InlineData("quote \" ' <script>alert(1)</script> (a) \\P {x}")]
    [InlineData("%%d %%% 100% %%u%%037 5%%", "% %d % % % 100% % %u% %037 5% %")]
    [InlineData("\\U+0041 \\\\ ^J ^ ~")]
    [InlineData("\u00D8 25 \u2264 90\u00B0 \u6C34")]
    public void A_hostile_text_is_read_as_it_is_written(string text, string? spaced = null)
    {
        string python = Readers.PythonWith("ezdxf");
        using var folder = new TemporaryFolder();
        using var read = Json(python, folder.Write("a.dxf", DxfWriter.Write(Sheet(text))));
        Assert.Empty(read.RootElement.GetProperty("faults").EnumerateArray());
        Assert.Equal(spaced ?? text, read.RootElement.GetProperty("TEXT")[0][4].GetString());
    }

    /// <summary>A whole plan of hostile names reads without a fault, sheet by sheet.</summary>
    [SkippableFact]
    public void A_plan_from_a_stranger_reads_without_a_fault()
    {
        string python = Readers.PythonWith("ezdxf");
        var names = ((IEnumerable<object[]>)HostileNameTests.Names).Select(n => (string)n[0]).Where(n => n.Length < 100);
        foreach (string name in Thoroughness.Slice(names, 5))
        {
            using var folder = new TemporaryFolder();
            CliRun.In(folder.Path, HostileNameTests.PlanNamed(name), "draw", "-", "--format", "dxf", "--sheets", "1", "--out", ".");
            foreach (string file in folder.Files.Where(f => f.EndsWith(".dxf", StringComparison.Ordinal)))
            {
                using var read = Json(python, folder.At(file));
                Assert.Empty(read.RootElement.GetProperty("faults").EnumerateArray());
                Assert.True(read.RootElement.GetProperty("TEXT").GetArrayLength() > 20);
            }
        }
    }

    [SkippableFact]
    public void Dashes_are_as_long_as_on_paper_times_the_scale()
    {
        string python = Readers.PythonWith("ezdxf");
        using var folder = new TemporaryFolder();
        var sheet =
            new SheetScene("x", "t", "d", 100, 100, [new LineItem(new(0, 0), new(9, 9), new Pen(0.25, Dash: [3, 0.75]), "P-DOMW")], 50);
        using var read = Json(python, folder.Write("a.dxf", DxfWriter.Write(sheet)));
        Assert.Equal(
            [150, -37.5], read.RootElement.GetProperty("dashes").GetProperty("DASHED-025-50").EnumerateArray().Select(d => d.GetDouble()));
    }

    /// <summary>
    /// ezdxf knows the numbered colours by a table: in it, too, each of ours has a number that is as near it as 255 colours come.
    /// </summary>
    [SkippableFact]
    public void Numbered_colours_look_alike_in_another_program()
    {
        const int FarOff = 64;
        string python = Readers.PythonWith("ezdxf");
        string[] colours =
            [.. typeof(Palette).GetFields().Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!).Except([Palette.Black])];
        string numbers = string.Join(',', colours.Select(DxfColour.Nearest));
        using var read =
            JsonDocument.Parse(
                Readers.Run(
                    python, "-c",
                    $"import json; from ezdxf import colors; print(json.dumps([list(colors.aci2rgb(i)) for i in [{numbers}]]))").Out);
        Assert.All(colours.Zip(read.RootElement.EnumerateArray()), pair => Assert.All(
            Enumerable.Range(0, 3),
            part => Assert.InRange(
                pair.Second[part].GetInt32() - Convert.ToInt32(pair.First.Substring(1 + (2 * part), 2), 16), -FarOff, FarOff)));
        Assert.Equal(DxfColour.Ink, DxfColour.Nearest(Palette.Black));
    }

    [SkippableTheory]
    [InlineData("poultry-40ft")]
    [InlineData("vegetable-l-shed")]
    public void Gdal_finds_the_lines_and_texts_too(string template)
    {
        string ogr = OutsidePrograms.Find("ogr2ogr");
        using var folder = new TemporaryFolder();
        var sheet = DrawnPlans.Template(template)[0];
        var (output, complaints) =
            Readers.Run(
                ogr, "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=6", "/vsistdout/", folder.Write("a.dxf", DxfWriter.Write(sheet)));
        Assert.DoesNotContain("ERROR", complaints);
        using var read = JsonDocument.Parse(output);
        var features = read.RootElement.GetProperty("features").EnumerateArray().ToList();

        var texts = sheet.Items.OfType<TextItem>().ToList();
        var points = features.Where(f => f.GetProperty("geometry").GetProperty("type").GetString() == "Point").ToList();
        Assert.Equal(
            texts.Select(t => InPlainLetters(t.Text)),
            points.Select(p => Plain(p.GetProperty("properties").GetProperty("Text").GetString()!)).SkipLast(1));
        Assert.All(texts.Zip(points), p => AssertAt(p.First.At, p.Second.GetProperty("geometry").GetProperty("coordinates")));

        // A line has two ends; circles and outlines have more.
        var lines = features.Where(f => f.GetProperty("geometry").GetProperty("type").GetString() == "LineString")
            .Select(f => f.GetProperty("geometry").GetProperty("coordinates")).Where(c => c.GetArrayLength() == 2).ToHashSet();
        Assert.All(sheet.Items.OfType<LineItem>(), l => Assert.Contains(lines, c => IsAt(l.From, c[0]) && IsAt(l.To, c[1])));

        bool IsAt(PaperPoint paper, JsonElement at)
            => True(sheet, paper).Zip([at[0].GetDouble(), at[1].GetDouble()]).All(p => Math.Abs(p.First - p.Second) < Near);
        void AssertAt(PaperPoint paper, JsonElement at) => Assert.True(IsAt(paper, at), $"{paper} is not at {at}");
    }

    /// <summary>
    /// GDAL leaves the codes of characters to whoever shows the text, and reads the one of R12 for diameters as the sign for it.
    /// </summary>
    private static string Plain(string text)
        => Regex.Replace(
            text.Replace('\u2300', '\u00D8'), @"\\U\+([0-9A-F]{4})", m
                => ((char)int.Parse(m.Groups[1].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());

    private static SheetScene Sheet(string text)
        => new("x", text, text, 100, 100, [new TextItem(text, new(10, 10), 2.5, TextAnchor.Start, "A-ANNO-TEXT")], 50);

    private static JsonDocument Json(string python, string file) => JsonDocument.Parse(Readers.Run(python, "-c", Read, file).Out);

    private static void Same(JsonElement read, string kind, IEnumerable<double[]> drawn, int more = 0)
    {
        var expected = drawn.ToList();
        var found = read.GetProperty(kind).EnumerateArray().ToList();
        Assert.Equal(expected.Count + more, found.Count);
        foreach (var (want, have) in expected.Zip(found))
        {
            Assert.All(
                want.Zip(have.EnumerateArray().Select(v => v.ValueKind == JsonValueKind.Number ? v.GetDouble() : 0)), p
                    => Assert.Equal(p.First, p.Second, Near));
        }
    }
}
