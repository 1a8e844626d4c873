using System.Text.Json;
using Floorplan.Drawing.Dxf;
using Floorplan.Drawing.Faces;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Cli;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>
/// The files for a cutting table, read by ezdxf: every hole again at its place to 0.01 mm, closed, and nothing else but the datum
/// cross.
/// </summary>
public class CutOutDxfTests
{
    private const double Near = 0.01;

    private const string Read = """
        import sys, json, ezdxf
        doc = ezdxf.readfile(sys.argv[1])
        faults = doc.audit()
        out = {"faults": len(faults.errors) + len(faults.fixes), "holes": [], "circles": [], "lines": [], "others": 0, "open": 0}
        for e in doc.modelspace():
            if e.dxftype() == "POLYLINE":
                out["open"] += 0 if e.is_closed else 1
                xs = [p[0] for p in e.points()]; ys = [p[1] for p in e.points()]
                out["holes"].append([min(xs), min(ys), max(xs), max(ys)])
            elif e.dxftype() == "CIRCLE": out["circles"].append([*tuple(e.dxf.center)[:2], e.dxf.radius])
            elif e.dxftype() == "LINE": out["lines"].append([*tuple(e.dxf.start)[:2], *tuple(e.dxf.end)[:2]])
            else: out["others"] += 1
        print(json.dumps(out))
        """;

    private static IReadOnlyList<(string Name, string Text)> Files(Plan plan)
        => CutOutDxf.Of(CheckedPlan.Facts(plan), new FrameHits([]));

    public static TheoryData<string> Templates => [.. Thoroughness.Slice(DrawnPlans.Templates, 6)];

    [SkippableTheory, MemberData(nameof(Templates))]
    public void Every_hole_is_found_again_at_its_coordinates(string template)
    {
        string python = Readers.PythonWith("ezdxf");
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template + ".unit")));
        var files = Files(plan).ToDictionary(f => f.Name, f => f.Text);
        var cuts = CutOuts.Of(plan);
        var pipes = ServiceHole.Of(plan);
        Assert.Equal(
            cuts.Select(c => c.Wall).Concat(pipes.Select(h => h.Wall).OfType<ShellWall>()).Distinct().Count(),
            files.Keys.Count(k => k.Contains("wall", StringComparison.Ordinal)));
        foreach (var wall in cuts.GroupBy(c => c.Wall))
        {
            // Walls that face the same way are numbered, the outermost first.
            var alike = ShellWall.Of(plan.Shell).Where(w => w.Side == wall.Key.Side).ToList();
            string which = alike.Count == 1 ? "" : $"-{alike.IndexOf(wall.Key) + 1}";
            string name = $"cut-outs-{wall.Key.Side.ToString().ToLowerInvariant()}-wall{which}-mm";
            using var read = Json(python, files[name]);
            AssertSound(read);
            double sign = wall.Key.Side is Side.North or Side.West ? -1 : 1;
            var expected =
                wall.Select(
                    c => new[] {
                        Math.Min(sign * c.Along.Millimetres, sign * c.Right.Millimetres), c.Bottom.Millimetres,
                        Math.Max(sign * c.Along.Millimetres, sign * c.Right.Millimetres), c.Top.Millimetres });
            AssertSame(expected, read.RootElement.GetProperty("holes"));
            AssertSame(pipes.Where(h => h.Wall == wall.Key)
                .Select(h => new[] { sign * h.X.Millimetres, h.Y.Millimetres, h.Width!.Value.Millimetres / 2 }),
                    read.RootElement.GetProperty("circles"));
        }
    }

    [SkippableFact]
    public void Floor_drains_are_circles_of_their_pipe()
    {
        string python = Readers.PythonWith("ezdxf");
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", "poultry-40ft.unit")));
        using var read = Json(python, Files(plan).Single(f => f.Name == "cut-outs-floor-mm").Text);
        AssertSound(read);
        AssertSame(ServiceHole.Of(plan).Where(h => h.Surface == HoleSurface.Floor)
            .Select(h => new[] { h.X.Millimetres, h.Y.Millimetres, h.Width!.Value.Millimetres / 2 }),
                read.RootElement.GetProperty("circles"));
    }

    [SkippableFact]
    public void A_fan_in_the_roof_is_a_rectangle_about_its_middle()
    {
        string python = Readers.PythonWith("ezdxf");
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", "poultry-40ft.unit")));
        using var read = Json(python, Files(plan).Single(f => f.Name == "cut-outs-roof-mm").Text);
        AssertSound(read);
        var fan = Assert.Single(ServiceHole.Of(plan), h => h.Surface == HoleSurface.Roof);
        double half = 8 * 25.4;
        AssertSame(
            [[fan.X.Millimetres - half, fan.Y.Millimetres - half, fan.X.Millimetres + half, fan.Y.Millimetres + half]],
            read.RootElement.GetProperty("holes"));
    }

    private static void AssertSound(JsonDocument read)
    {
        Assert.Equal(0, read.RootElement.GetProperty("faults").GetInt32());
        Assert.Equal(0, read.RootElement.GetProperty("others").GetInt32());
        Assert.Equal(0, read.RootElement.GetProperty("open").GetInt32());

        // The cross at the datum.
        AssertSame([[-50, 0, 50, 0], [0, -50, 0, 50]], read.RootElement.GetProperty("lines"));
    }

    private static void AssertSame(IEnumerable<double[]> expected, JsonElement found)
    {
        var read = found.EnumerateArray().Select(e => e.EnumerateArray().Select(v => v.GetDouble()).ToArray()).ToList();
        var wanted = expected.ToList();
        Assert.Equal(wanted.Count, read.Count);
        for (int i = 0; i < wanted.Count; i++)
        {
            Assert.All(wanted[i].Zip(read[i]), p => Assert.Equal(p.First, p.Second, Near));
        }
    }

    private static JsonDocument Json(string python, string dxf)
    {
        using var folder = new TemporaryFolder();
        return JsonDocument.Parse(Readers.Run(python, "-c", Read, folder.Write("a.dxf", dxf)).Out);
    }
}
