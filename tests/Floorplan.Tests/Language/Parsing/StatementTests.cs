using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Parsing;

/// <summary>What the two sample plans say, read back from the typed statements.</summary>
public class StatementTests
{
    private static readonly SyntaxTree Tarn = Sample.Parse(Sample.TarnFoot);
    private static readonly SyntaxTree Every = Sample.Parse(Sample.EveryDetail);

    [Fact]
    public void The_samples_have_no_mistakes()
    {
        Assert.Empty(Tarn.Diagnostics);
        Assert.Empty(Every.Diagnostics);
    }

    [Fact]
    public void The_plan_fills_the_title_block()
    {
        var plan = One<PlanStatement>(Every);
        Assert.Equal("Every detail", plan.Label!.Text);
        Assert.Equal(["A", "B"], plan.Revisions.Select(r => r.Mark.Text));
        Assert.Equal("2026-12-02", plan.Revisions[1].Date!.Text);
        Assert.Equal(
            (UnitSystem.Feet, "eu", "Odd O'Brindle", "North yard"), (plan.Units, plan.Code!.Text, plan.Owner!.Text, plan.Site!.Text));
        Assert.Equal(("P. Quillfeather", "T. Brindlewick"), (plan.DrawnBy!.Text, plan.CheckedBy!.Text));
        Assert.Equal(
            ("birds", 5m, "lb"),
            (plan.Products.Single().Unit.Text, plan.Products[0].WeightEach!.Value.Number, plan.Products[0].WeightEach!.Value.Unit.Symbol));
        Assert.Equal(("women", 10m, 90.0), (plan.People!.Who!.Text, plan.People.Least!.Value, plan.People.MostPercent));
        Assert.Equal("Check all sizes on site", plan.Notes.Single().Text);
    }

    [Fact]
    public void Shells_of_every_form()
    {
        var container = One<ShellStatement>(Tarn);
        Assert.Equal(
            ("container", 40m, true, Side.West),
            (container.Kind!.Text, container.ContainerFeet!.Value, container.HighCube, container.Doors!.Side));
        Assert.Equal(
            (60, 60, 40, 600),
            (Mm(container.Lining!.Walls), Mm(container.Lining.Ceiling), Mm(container.Lining.Floor), Mm(container.GroundBelowFloor)));
        var shed = One<ShellStatement>(Every);
        Assert.Equal(6, shed.Corners.Count);
        Assert.Equal(5029.2, Mm(shed.Corners[3].X));
        Assert.Equal((20m, 2743.2, 12.7, 1219.2), (shed.TrueNorth!.Value, Mm(shed.Eaves), Mm(shed.Lining!.Ceiling), Mm(shed.PostsEvery)));
        var trailer = One<ShellStatement>(Sample.Parse("shell trailer 6 m x 2.4 m x 2.5 m\n  axles 2\n  hitch west\n  doors east"));
        Assert.Equal(
            (6000, 2500, 2m, Side.West),
            (Mm(trailer.Size!.Width), Mm(trailer.Size.Height), trailer.Axles!.Count.Value, trailer.Hitch!.End.Side));
    }

    [Fact]
    public void Rooms_are_slices_or_rectangles()
    {
        var receiving = Named<RoomStatement>(Tarn, "receiving");
        Assert.Equal(("dirty", Side.West, 3600), (receiving.Class!.Text, receiving.From!.Side!.Side, Mm(receiving.To!.Distance)));
        var lobby = Named<RoomStatement>(Tarn, "lobby");
        Assert.Equal((1300, 1100, "filleting"), (Mm(lobby.Area!.Width), Mm(lobby.Area.Depth), lobby.In!.Text));
        Assert.IsType<CornerTerm>(lobby.Place.Single());
        Assert.Equal(0m, Named<RoomStatement>(Tarn, "holding").Keep!.Value.Number);
        var kill = Named<RoomStatement>(Every, "kill");
        Assert.True(kill.WashedDown);
        Assert.Equal(["floor", "walls"], kill.Finishes.Select(f => f.Surface.Text));
        Assert.False(Named<RoomStatement>(Every, "pack").WashedDown);
    }

    [Fact]
    public void Openings_say_their_leaf_and_place()
    {
        var d3 = Named<OpeningStatement>(Tarn, "d3");
        Assert.Equal(
            ("lobby", "filleting", Side.East, "filleting", true),
            (d3.First!.Text, d3.Second!.Text, d3.Wall!.Side, d3.SwingsTo!.Text, d3.ClosesItself));
        Assert.Equal((800, 2050), (Mm(d3.Size!.Width), Mm(d3.Size.Depth)));
        Assert.Equal(100, Mm(((FromTerm)d3.Place.Single()).Distance));
        Assert.True(Named<OpeningStatement>(Tarn, "d4").OpensFromInside);
        Assert.Equal(950, Mm(Named<OpeningStatement>(Tarn, "h1").Sill));
        string[] leaves = [.. Every.Statements.OfType<OpeningStatement>().Select(o => o.Leaf?.Text ?? "-")];
        Assert.Equal(["swings", "slides", "rolls", "swings", "strip", "-", "-", "-", "-"], leaves);
        Assert.Equal(Side.West, Named<OpeningStatement>(Every, "d1").Hinge!.Side);
    }

    [Fact]
    public void Stations_say_all_their_details()
    {
        var bench = Named<StationStatement>(Tarn, "bench");
        Assert.Equal(
            (1800, 600, 920),
            (
                Mm(bench.Value(StationDetails.Size)!.Width), Mm(bench.Value(StationDetails.Size)!.Depth),
                Mm(bench.Value(StationDetails.Size)!.Height)));
        var workers = bench.Values(StationDetails.Workers).Single();
        Assert.Equal((2, Side.South, 800), (workers.Count, workers.Side.Side, Mm(workers.Apart)));
        var needs = bench.Values(StationDetails.Needs).Single();
        Assert.Equal(["cold", "hot", "drain"], needs.Select(n => n.Kind.Text));
        Assert.Equal((60m, "C"), (needs[1].At!.Value.Number, needs[1].At!.Value.Unit.Symbol));
        var waste = bench.Values(StationDetails.Waste).Single();
        Assert.Equal(("frame-bin", 0.40m), (waste.To!.Text, waste.Amount!.Value.Number));
        var tipping = Named<StationStatement>(Tarn, "tipping");
        var clear = tipping.Values(StationDetails.Clear).Single();
        Assert.Equal((Side.South, 900, "crate trolley"), (clear.Side.Side, Mm(clear.Depth), clear.Purpose!.Text));
        var pluck = Named<StationStatement>(Every, "pluck");
        var wants = pluck.Values(StationDetails.Needs).Single();
        Assert.True(pluck.Value(StationDetails.Size)!.Round);
        Assert.Equal((90m, 2, 5), (pluck.Value(StationDetails.Turned)!.Value, pluck.Values(StationDetails.Clear).Count, wants.Count));
        Assert.Equal(["V", "hp"], wants[0].Amounts.Select(a => a.Value.Unit.Symbol));
        Assert.Equal("single-phase", wants[0].Phase!.Text);
        var weight = pluck.Value(StationDetails.Weight)!;
        Assert.Equal((80m, 480m), (weight.Empty!.Value.Number, weight.Full!.Value.Number));
        var hang = Named<StationStatement>(Every, "hang");
        Assert.NotNull(hang.Value(StationDetails.Hung));
        Assert.Equal(1828.8, Mm(hang.Value(StationDetails.Underside)));
        Assert.Equal((4m, 40m), (hang.Value(StationDetails.Batch)!.Value.Number, hang.Value(StationDetails.Cycle)!.Value.Number));
        Assert.Equal(863.6, Mm(Named<StationStatement>(Every, "table").Value(StationDetails.WorkHeight)));
        Assert.Equal(
            ("table", "pack"), (Named<StationStatement>(Every, "bench").Kind!.Text, Named<StationStatement>(Every, "bench").Room!.Text));
        Assert.NotNull(Named<StationStatement>(Every, "trolley").Value(StationDetails.OnWheels));
    }

    [Fact]
    public void What_a_store_holds_is_multiplied_out()
    {
        var rack = Named<StationStatement>(Tarn, "rack").Value(StationDetails.Holds)!.Value;
        Assert.Equal((600m, "fish"), (rack.Number, rack.Unit.Symbol));
    }

    [Fact]
    public void Bins_and_sinks_stand_on_one_line()
    {
        var bin = Named<StationStatement>(Tarn, "offal-bin");
        Assert.Equal(
            ("bin", 60m, "receiving", 400),
            (bin.Keyword.Text, bin.Value(StationDetails.Volume)!.Value.Number, bin.Room!.Text, Mm(bin.Value(StationDetails.Size)!.Depth)));
        Assert.Collection(
            bin.Place, t
                => Assert.Equal(Side.South, ((AgainstTerm)t).Wall.Side), t
                    => Assert.Equal(
                        (Side.West, "gutting", 100),
                        (((BesideTerm)t).Direction.Side, ((BesideTerm)t).Other.Text, Mm(((BesideTerm)t).Gap))));
        Assert.Equal(["hand"], Named<StationStatement>(Tarn, "s1").Purpose.Select(p => p.Text));
    }

    [Fact]
    public void Every_place_term_is_read() => Assert.Equal(
        [
            nameof(AgainstTerm), nameof(AtTerm), nameof(BesideTerm), nameof(CentredOnTerm), nameof(CentredTerm), nameof(CornerTerm),
            nameof(FlushTerm), nameof(FromTerm), nameof(InLineTerm)],
        Tarn.Statements.Concat(Every.Statements).SelectMany(Terms).Select(t => t.GetType().Name).Distinct().Order());

    [Fact]
    public void Service_points_and_falls()
    {
        var water = Named<WaterStatement>(Tarn, "w1");
        Assert.Equal(("filleting", Side.North, 1200), (water.Room!.Text, water.Wall!.Side, Mm(water.Height)));
        Assert.Equal(("cold", "hot"), (water.Cold!.Text, water.Hot!.Text));
        Assert.Equal(("w1", 7500), (Named<HoseStatement>(Tarn, "hz1").On!.Text, Mm(Named<HoseStatement>(Tarn, "hz1").Length)));
        Assert.Equal(["A", "V"], Named<PanelStatement>(Tarn, "p1").Ratings.Select(r => r.Value.Unit.Symbol));
        Assert.Equal(Phases.SinglePhase, Named<PanelStatement>(Tarn, "p1").Phases!.Value);
        var drain = Named<DrainStatement>(Every, "fd1");
        Assert.Equal((101.6, 152.4), (Mm(drain.Size), Mm(drain.OutletBelow)));
        Assert.Equal((2m, "fd1"), (One<FallsStatement>(Tarn).Slope!.Value.Number, One<FallsStatement>(Tarn).To!.Text));
        Assert.Equal([AirDirection.Supply, AirDirection.Exhaust], One<AirStatement>(Every).Rooms.Select(r => r.Direction));
        Assert.Equal(3, One<RailStatement>(Every).Path.Count);
    }

    [Fact]
    public void Flows_are_chains_with_their_carriage_and_time()
    {
        var waste = Tarn.Statements.OfType<FlowStatement>().Single(f => f.Stream!.Text == "waste");
        Assert.Equal(["offal-bin", "d1", "outside"], waste.Chains[1].Stops.Select(s => s.Text));
        Assert.Equal(("hand", "after"), (waste.Chains[1].Carriage!.Text, waste.Chains[1].Period!.Text));
        var product = Tarn.Statements.OfType<FlowStatement>().Single(f => f.Stream!.Text == "product");
        Assert.Equal(("trolley", 600), (product.Chains[3].Carriage!.Text, Mm(product.Chains[3].Width)));
    }

    [Fact]
    public void The_day_limits_accepts_and_sheets()
    {
        var day = One<DayStatement>(Every);
        Assert.Equal(("birds/hour", 5m, 2), (day.Targets[0].Amount.Value.Unit.Symbol, day.Targets[0].Hours!.Value.Number, day.Crew.Count));
        Assert.Equal((30m, 10m), (day.Breaks!.Value.Number, day.Changeover!.Value.Number));
        Assert.Equal(
            ["2.10 m3", "14.50 "],
            day.Rates.Concat(day.Prices).Select(m => FormattableString.Invariant($"{m.Amount.Value} {m.Per?.Text}")));
        Assert.Equal(4000, Mm(One<LimitStatement>(Tarn).Length));
        Assert.Equal([null, 2m, 1.5m], Every.Statements.OfType<LimitStatement>().Select(l => l.Quantity?.Value.Number));
        var accept = One<AcceptStatement>(Every);
        Assert.Equal(("doubles-back", "the box is too short", "the inspector"), (accept.Name!.Text, accept.Reason!.Text, accept.By!.Text));
        Assert.Equal(["pluck", "bench"], accept.At.Select(n => n.Text));
        Assert.Equal([null, 1m], Every.Statements.OfType<SheetStatement>().Select(s => s.Number?.Value));
        Assert.Equal(
            ("11 x 17 in", 48m),
            (Every.Statements.OfType<SheetStatement>().First().Paper!.Text, Every.Statements.OfType<SheetStatement>().Last().Scale!.Value));
    }

    private static double? Mm(LengthSyntax? length) => length?.Value.Millimetres;

    private static IEnumerable<PlaceTerm> Terms(Statement statement) => statement switch
    {
        StationStatement s => s.Place,
        OpeningStatement o => o.Place,
        RoomStatement r => r.Place,
        ServiceStatement p => p.Place,
        _ => [],
    };

    private static T One<T>(SyntaxTree tree) => tree.Statements.OfType<T>().First();

    private static T Named<T>(SyntaxTree tree, string name)
        where T : Statement => tree.Statements.OfType<T>().Single(s => s.Name?.Text == name);
}
