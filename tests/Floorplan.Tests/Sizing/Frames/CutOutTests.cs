using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Frames;

/// <summary>Every figure here is worked out by hand from the plan and the ISO 668 sizes of the box.</summary>
public sealed class CutOutTests
{
    // Outside 6058 x 2438, inside 5867 x 2330: side walls 54 thick; lining 60, floor 40.
    private const string Box = """
        plan "One box"
          units metric
        shell container 20 ft standard
          lining walls 60, ceiling 60, floor 40
          doors west
        room work "Work" dry from west to east
        """;

    [Fact]
    public void A_door_stands_on_the_bottom_rail_and_its_hole_is_larger_by_the_frame()
    {
        var cut = One("door d1 work to outside, south wall, 500 from west, 900 x 2050, swings out");

        // Datum to the finished west face: 6058 - 5867 - 54 = 137 steel at the door end, and 60 of lining.
        Assert.Equal(Mm(137 + 60 + 500 - 50), cut.Along);
        Assert.Equal(Mm(162), cut.Bottom);
        Assert.Equal(Mm(1000), cut.Width);

        // From the rail at 162 to the head: floor at 164.5 + 40, door 2050, frame 50.
        Assert.Equal(Mm(164.5 + 40 + 2050 + 50 - 162), cut.Height);
        Assert.Equal(Mm(137 + 60 + 500), cut.ClearAlong);
        Assert.Equal(Mm(164.5 + 40), cut.ClearBottom);
        Assert.Equal(["head 1000 Mitre Mitre", "post 2142.5 Mitre Square", "post 2142.5 Mitre Square"], Pieces(cut));
    }

    [Fact]
    public void A_window_has_a_frame_all_round()
    {
        var cut = One("window n1 work to outside, north wall, 1000 from west, 1200 x 800, sill 1100, frame angle 40 x 60 x 4, radius 20");

        Assert.Equal(Mm(137 + 60 + 1000 - 40), cut.Along);
        Assert.Equal(Mm(164.5 + 40 + 1100 - 40), cut.Bottom);
        Assert.Equal((Mm(1280), Mm(880), Mm(20)), (cut.Width, cut.Height, cut.Radius));
        Assert.Equal(["head 1280 Mitre Mitre", "post 880 Mitre Mitre", "post 880 Mitre Mitre", "sill 1280 Mitre Mitre"], Pieces(cut));
    }

    [Theory]
    [InlineData("vent v1 work to outside, north wall, 1000 from west, 300 x 200, sill 1800")]
    [InlineData("hatch v1 work to outside, north wall, 1000 from west, 300 x 200, sill 1800, frame none")]
    public void Without_a_frame_the_hole_is_the_clear_opening(string opening)
    {
        var cut = One(opening);
        Assert.Null(cut.Frame);
        Assert.Equal((Mm(300), Mm(200)), (cut.Width, cut.Height));
        Assert.Equal((cut.ClearAlong, cut.ClearBottom), (cut.Along, cut.Bottom));
    }

    [Fact]
    public void The_shells_own_doors_and_holes_in_partitions_are_not_cut()
        => Assert.Empty(CutOuts.Of(CheckedPlan.Plan(Box)));

    [Fact]
    public void An_L_shaped_shed_has_six_walls_and_each_hole_is_in_its_own()
    {
        var plan = CheckedPlan.Plan("""
            plan "L"
              units metric
            shell shed corners 0 0, 9000 0, 9000 3000, 4000 3000, 4000 6000, 0 6000, eaves 2700
            room work "Work" dry from west to east
            door d1 work to outside, north wall, 500 from west, 900 x 2050, swings out
            door d2 work to outside, north wall, 6000 from west, 900 x 2050, swings out
            """);
        var walls = ShellWall.Of(plan.Shell);
        Assert.Equal(6, walls.Count);
        Assert.Equal([Mm(9000), Mm(4000), Mm(5000), Mm(6000), Mm(3000), Mm(3000)], walls.Select(w => w.Run));
        var cuts = CutOuts.Of(plan);
        Assert.Equal(["d1", "d2"], cuts.Select(c => c.Opening.Id));
        Assert.All(cuts, c => Assert.Equal(Side.North, c.Wall.Side));
        Assert.True(cuts[0].Wall.At > cuts[1].Wall.At);
    }

    [Fact]
    public void The_cut_list_adds_up()
    {
        var list = CutList.Of(CutOuts.Of(CheckedPlan.Plan(Box + "\n" + """
            door d1 work to outside, south wall, 500 from west, 900 x 2050, swings out
            window n1 work to outside, north wall, 1000 from west, 1200 x 800, sill 1100
            """)), UnitSystem.Metric);
        var total = Assert.Single(list.Totals);
        Assert.Equal(7, total.Pieces);
        // Posts of 2142.5 are sawn to what a tape shows.
        Assert.Equal(Mm(1000 + (2 * 2143) + (2 * 1300) + (2 * 900)), total.Length);
        Assert.Equal(total.Length.Metres * SteelSection.Usual(UnitSystem.Metric).MassPerMetre, total.Kilograms.Value, 6);
    }

    [Fact]
    public void A_floor_drain_is_a_hole_from_the_datum_to_its_middle()
    {
        var hole =
            Assert.Single(
                ServiceHole.Of(
                    CheckedPlan.Plan(Box
                        + "\ndrain fd1 floor in work, 2400 from west, 700 from south, 100\ndrain t1 trench in work, 4000 from west, 700 "
                        + "from south\n")));
        Assert.Equal((Mm(137 + 60 + 2400), Mm(54 + 60 + 700), Mm(100)), (hole.X, hole.Y, hole.Width));
    }

    /// <summary>Linings of 60 mm; ISO 668: 2438 mm wide outside. In a wall a hole counts up from the underside of the box.</summary>
    [Fact]
    public void A_hole_for_a_pipe_is_set_out_from_the_datum_to_its_middle()
    {
        var plan =
            CheckedPlan.Plan(Box
                + "\nhole p1 \"Water\" in work, south wall, 2400 from west, height 300, 40\nhole f1 \"Fan\" roof in work, 1000 from "
                + "west, 700 from south, 400 x 300\n");
        var holes = ServiceHole.Of(plan);

        Assert.Equal(
            (HoleSurface.Roof, Mm(137 + 60 + 1000), Mm(54 + 60 + 700), Mm(400), Mm(300)),
            (holes[0].Surface, holes[0].X, holes[0].Y, holes[0].Width, holes[0].Depth));
        Assert.Equal(
            (Side.South, Mm(137 + 60 + 2400), Mm(300) - plan.Shell.DatumHeight, Mm(40), null),
            (holes[1].Wall!.Side, holes[1].X, holes[1].Y, holes[1].Width, holes[1].Depth));
        Assert.Equal(2, holes.Count);
    }

    [Fact]
    public void A_hole_through_an_inner_wall_is_not_cut_in_the_shell() => Assert.Empty(ServiceHole.Of(CheckedPlan.Plan(
        Box.Replace("from west to east", "from west to 3000", StringComparison.Ordinal)
            + "\nroom other \"Other\" clean from 3000 to east\nhole p1 \"Water\" in work, east wall, 400 from south, height 300, 40\n")));

    private static CutOut One(string opening) => Assert.Single(CutOuts.Of(CheckedPlan.Plan(Box + "\n" + opening + "\n")));

    private static IEnumerable<string> Pieces(CutOut cut)
        => cut.Frame!.Pieces.Select(p => FormattableString.Invariant($"{p.Part} {p.Length.Millimetres} {p.Top} {p.Foot}"));

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
