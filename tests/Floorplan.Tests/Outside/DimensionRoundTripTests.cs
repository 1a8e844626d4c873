using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Print.Pdf;
using Floorplan.Sizing.Frames;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using UglyToad.PdfPig;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>
/// What the welder reads off the printed sheets is the plan: dimensions parsed back from the letters of the PDF, by a reader that is
/// not ours.
/// </summary>
public class DimensionRoundTripTests
{
    /// <summary>How far a figure that fits its stretch may stand off its middle, beside the stroke at its end; paper mm.</summary>
    private const double OffMiddle = 1.5;

    public static TheoryData<string> Templates => [.. Thoroughness.Slice(DrawnPlans.Templates, 6)];

    [Theory]
    [InlineData("2600", 2600)]
    [InlineData("8'-6 1/2\"", ((8 * 12) + 6.5) * 25.4)]
    [InlineData("10'-0\"", 120 * 25.4)]
    [InlineData("9\"", 9 * 25.4)]
    [InlineData("3/16\"", 3 / 16.0 * 25.4)]
    public void Dimensions_are_read_as_a_tape_is(string text, double mm) => Assert.Equal(mm, PrintedDimension.Parse(text), 1e-9);

    [Theory, MemberData(nameof(Templates))]
    public void Every_chain_of_the_general_arrangement_adds_up_to_the_inside_of_the_shell(string template)
    {
        var (plan, printed) = Read(template, 1);
        var inside = plan.Shell.Finished.EnvelopeInternal;
        var outside = plan.Shell.Outside.EnvelopeInternal;
        double half = Half(plan);
        foreach (bool upright in new[] { false, true })
        {
            double Along(NetTopologySuite.Geometries.Envelope box) => upright ? box.Height : box.Width;
            Assert.Equal(Along(inside), Assert.Single(printed, p => p.Row == "dimension:inside" && p.Upright == upright).Mm, half);
            Assert.Equal(Along(outside), Assert.Single(printed, p => p.Row == "dimension:outside" && p.Upright == upright).Mm, half);
        }

        string[] chains = ["openings", "stations", "rooms", "corners"];
        var rows = printed.Where(p => chains.Contains(p.Row.Split(':')[1])).GroupBy(p => (p.Row, p.Upright)).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, r => Assert.Equal(r.Key.Upright ? inside.Height : inside.Width, r.Sum(p => p.Mm), half));
    }

    [Theory, MemberData(nameof(Templates))]
    public void Openings_and_rooms_are_dimensioned_as_the_plan_has_them(string template)
    {
        var (plan, printed) = Read(template, 1);
        var inside = plan.Shell.Finished.EnvelopeInternal;
        foreach (var side in Enum.GetValues<Side>())
        {
            bool alongX = side is Side.North or Side.South;
            double[] ends = alongX ? [inside.MinX, inside.MaxX] : [inside.MinY, inside.MaxY];
            var openings = plan.Openings.Where(o => o.InShell && o.Wall == side)
                .SelectMany(o => alongX ? new[] { o.Start.X, o.End.X } : [o.Start.Y, o.End.Y]).Select(l => l.Millimetres).ToList();
            var stretches = Stretches([.. openings, .. ends], Step(plan));

            // Doors as wide as the whole end are the inside size, which has its own row.
            if (stretches.Count > 1)
            {
                AssertSame(stretches, printed.Where(p => p.Row == $"dimension:openings:{side.ToString()[0]}"), Step(plan), side.ToString());
            }
        }

        // Rooms from wall to wall, one after another, have their lengths in the row of rooms.
        var slices =
            plan.Rooms.Where(r => Math.Abs(r.Bounds.South.Millimetres - inside.MinY) < 1
                && Math.Abs(r.Bounds.North.Millimetres - inside.MaxY) < 1).ToList();
        if (slices.Count > 1)
        {
            var lengths = printed.Where(p => p.Row is "dimension:rooms:S" or "dimension:rooms:N").Select(p => p.Mm).ToList();
            Assert.All(slices, r => Assert.Contains(lengths, l => Math.Abs(l - r.Bounds.Width.Millimetres) <= Step(plan)));
        }
    }

    /// <summary>
    /// A figure in the wrong place is as bad as a wrong figure: each stands in the middle of two places of the plan that lie so far
    /// apart.
    /// </summary>
    [Theory, MemberData(nameof(Templates))]
    public void No_dimension_measures_what_the_plan_does_not_have(string template)
    {
        var (plan, printed) = Read(template, 1);
        double scale = DrawnPlans.Template(template).PageWith("wall:shell").Denominator;
        foreach (bool upright in new[] { false, true })
        {
            double[] places = [.. Places(plan, upright).Distinct().Order()];
            var whole = printed.Single(p => p.Row == "dimension:outside" && p.Upright == upright);
            double middle = upright ? plan.Shell.Outside.EnvelopeInternal.Centre.Y : plan.Shell.Outside.EnvelopeInternal.Centre.X;
            foreach (var dimension in printed.Where(p => p.Upright == upright))
            {
                double at = middle + ((upright ? whole.Centre.Y - dimension.Centre.Y : dimension.Centre.X - whole.Centre.X) * scale);
                double reach =
                    Math.Max(OffMiddle, dimension.Mm / scale < (dimension.Width * TextSlack) + 1.9 ? dimension.Width : 0) * scale;
                Assert.True(
                    places.Any(a => places.Any(b => Math.Abs(b - a - dimension.Mm) <= Step(plan) && Math.Abs(((a + b) / 2) - at) <= reach)),
                    $"{dimension.Text} of {dimension.Row} is no distance of the plan there");
            }
        }
    }

    [Theory, MemberData(nameof(Templates))]
    public void Running_dimensions_of_the_walls_and_the_floor_are_the_cut_outs_from_their_datums(string template)
    {
        var (plan, printed) = Read(template, 6);
        var shell = plan.Shell;
        double half = HalfInSteel(plan);
        var pipes = ServiceHole.Of(plan).ToLookup(h => h.Wall);
        var cuts = CutOuts.Of(plan).ToLookup(c => c.Wall);
        var walls = ShellWall.Of(shell).Where(w => cuts.Contains(w) || pipes.Contains(w))
            .Select(w => (Key: w, Cuts: cuts[w].ToList(), Pipes: pipes[w].ToList())).ToList();
        double underside = shell.DatumHeight.Millimetres;
        double top = shell.Top.Millimetres - underside;
        double From(ShellWall wall) => wall.FinishedIn(shell).From.Millimetres;

        AssertSame(
            walls.SelectMany(
                w => Running(
                    [
                        w.Key.Run.Millimetres, .. w.Cuts.SelectMany(c => new[] { c.Along.Millimetres, c.Right.Millimetres }),
                        .. w.Pipes.Select(h => h.X.Millimetres)])), Row("datum:along"), half, "datum:along");
        AssertSame(
            walls.SelectMany(
                w => Running(
                    [
                        top, .. w.Cuts.SelectMany(c => new[] { c.Bottom.Millimetres, c.Top.Millimetres }),
                        .. w.Pipes.Select(h => h.Y.Millimetres)])), Row("datum:up"), half, "datum:up");
        AssertSame(
            walls.SelectMany(w => Running([.. w.Cuts.SelectMany(c => Clear(c).Select(p => p - From(w.Key)))])), Row("finished:along"), half,
            "finished:along");
        AssertSame(
            walls.SelectMany(
                w => Running(
                    [
                        shell.CeilingHeight.Millimetres,
                        .. w.Cuts.SelectMany(c => new[] { c.Opening.Sill.Millimetres, (c.Opening.Sill + c.Opening.Height).Millimetres })])),
                            Row("finished:up"), half, "finished:up");

        foreach (var level in ServiceHole.Of(plan).Where(h => h.Wall is null).GroupBy(h => h.Surface))
        {
            var outside = shell.Outside.EnvelopeInternal;
            string name = level.Key.ToString().ToLowerInvariant();
            AssertSame(
                Running([
                    outside.MaxX - shell.Datum.X.Millimetres, .. level.Select(h => h.Point.At.X.Millimetres - shell.Datum.X.Millimetres)]),
                        Row(name + ":South"), half, name + ", along");
            AssertSame(
                Running([
                    outside.MaxY - shell.Datum.Y.Millimetres, .. level.Select(h => h.Point.At.Y.Millimetres - shell.Datum.Y.Millimetres)]),
                        Row(name + ":West"), half, name + ", across");
        }

        string[] known =
            ["datum:along", "datum:up", "finished:along", "finished:up", "floor:South", "floor:West", "roof:South", "roof:West"];
        Assert.All(printed, p => Assert.Contains(p.Row["dimension:".Length..], known));

        IEnumerable<PrintedDimension> Row(string name) => printed.Where(p => p.Row == "dimension:" + name);
    }

    /// <summary>The welder's coordinate table says the same as the rows: mark, along, up, width x height, a line each.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void The_coordinate_table_has_every_cut_out_at_its_place(string template)
    {
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template + ".unit")));
        using var pdf = PdfDocument.Open(PdfWriter.Write(DrawnPlans.Template(template).OfSheet(6), new PdfInfo("t", "", "", null)));
        var lines = pdf.GetPages().SelectMany(PrintedTable.LinesOf).ToList();
        foreach (var cut in CutOuts.Of(plan))
        {
            double[] wanted = [.. new[] { cut.Along, cut.Bottom, cut.Width, cut.Height }.Select(l => l.Millimetres)];
            Assert.Contains(lines, l => l.Count > 3
                && l[0] == cut.Opening.Id
                && Sizes(l) is { } read
                && read.Zip(wanted).All(p => Math.Abs(p.First - p.Second) <= HalfInSteel(plan)));
        }

        static double[]? Sizes(IReadOnlyList<string> cells)
        {
            string[] texts = [cells[1], cells[2], .. cells[3].Split('\u00D7')];
            return texts.Length == 4 && texts.All(PrintedDimension.IsOne) ? [.. texts.Select(PrintedDimension.Parse)] : null;
        }
    }

    /// <summary>Sizes from the opening itself, not from the cut-out.</summary>
    private static double[] Clear(CutOut cut) => cut.Wall.RunsEastWest
        ? [cut.Opening.Start.X.Millimetres, cut.Opening.End.X.Millimetres]
        : [cut.Opening.Start.Y.Millimetres, cut.Opening.End.Y.Millimetres];

    /// <summary>From a slack of 10 % that the sheet keeps for other fonts.</summary>
    private const double TextSlack = 1.1;

    private static (Plan Plan, IReadOnlyList<PrintedDimension> Printed) Read(string template, int number)
    {
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template + ".unit")));
        var pages = DrawnPlans.Template(template).OfSheet(number);
        using var pdf = PdfDocument.Open(PdfWriter.Write(pages, new PdfInfo("t", "", "", null)));
        return (plan, [.. pages.SelectMany((p, i) => PrintedDimension.On(pdf.GetPage(i + 1), p))]);
    }

    /// <summary>
    /// A length or a place is rounded to the nearest step that a tape shows, 1 mm or 1/8 in, so it is off by half of one at most.
    /// </summary>
    private static double Half(Plan plan) => (plan.Units == UnitSystem.Metric ? 1 : 25.4 / 8) / 2 * Slack;

    /// <summary>Steel has 1/16 in.</summary>
    private static double HalfInSteel(Plan plan) => (plan.Units == UnitSystem.Metric ? 1 : 25.4 / 16) / 2 * Slack;

    /// <summary>A stretch of a chain lies between two rounded places, each off by half a step at most.</summary>
    private static double Step(Plan plan) => 2 * Half(plan);

    /// <summary>For numbers in floating point.</summary>
    private const double Slack = 1.0001;

    private static List<double> Stretches(IEnumerable<double> places, double step)
    {
        double[] all = [.. places.Order()];
        return [.. all.Zip(all.Skip(1), (a, b) => b - a).Where(d => d > step / 1000)];
    }

    /// <summary>Each once; the datum itself carries a circle.</summary>
    private static IEnumerable<double> Running(IEnumerable<double> places)
        => places.Select(p => Math.Round(p, 6)).Where(p => p != 0).Distinct();

    private static void AssertSame(IEnumerable<double> expected, IEnumerable<PrintedDimension> printed, double tolerance, string what)
    {
        double[] wanted = [.. expected.Order()];
        double[] read = [.. printed.Select(p => p.Mm).Order()];
        string both =
            $"{what}: expected {string.Join(", ", wanted.Select(w => $"{w:0.##}"))}, printed "
                + $"{string.Join(", ", read.Select(r => $"{r:0.##}"))}";
        Assert.True(wanted.Length == read.Length && wanted.Zip(read).All(p => Math.Abs(p.First - p.Second) <= tolerance), both);
    }

    private static IEnumerable<double> Places(Plan plan, bool upright)
    {
        double[] Of(Box box) => upright ? [box.South.Millimetres, box.North.Millimetres] : [box.West.Millimetres, box.East.Millimetres];
        return
        [
            .. plan.Shell.Outside.Coordinates.Concat(plan.Shell.Finished.Coordinates).Select(c => upright ? c.Y : c.X),
            .. plan.Rooms.SelectMany(r => Of(r.Bounds)),
            .. plan.Stations.SelectMany(s => Of(s.Bounds)),
            .. plan.Openings.SelectMany(o => upright
                ? new[] { o.Start.Y.Millimetres, o.End.Y.Millimetres }
                : [o.Start.X.Millimetres, o.End.X.Millimetres]),
        ];
    }
}
