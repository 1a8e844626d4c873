using CsCheck;
using Floorplan.Language.Syntax;
using Floorplan.Model.Stations;
using Xunit;

namespace Floorplan.Tests.Model.Binding.Placing;

public class PlaceTests
{
    /// <summary>The room is 5960 x 4000 mm, the thing 1000 x 500 mm, h1 spans y 1500 to 2300.</summary>
    [Theory]
    [InlineData("against north wall, 300 from west", 300, 3500)]
    [InlineData("against south wall, 300 from east", 4660, 0)]
    [InlineData("against east wall, 100 from north", 4960, 3400)]
    [InlineData("at 1200, 300", 1200, 300)]
    [InlineData("corner north-west", 0, 3500)]
    [InlineData("corner south-east", 4960, 0)]
    [InlineData("centred", 2480, 1750)]
    [InlineData("centred, 200 from south", 2480, 200)]
    [InlineData("200 from west, centred on h1", 200, 1650)]
    [InlineData("200 from west, in line with h1", 200, 1650)]
    [InlineData("in line with tank, against west wall", 0, 2350)]
    [InlineData("centred on tank, against south wall", 2300, 0)]
    [InlineData("centred on tank", 2300, 2350)]
    [InlineData("east of tank gap 100, flush south with tank", 3500, 2000)]
    [InlineData("west of tank gap 100, flush north with tank", 1100, 2700)]
    [InlineData("north of tank, flush east with tank", 2400, 3200)]
    [InlineData("south of tank gap 50, flush west with tank", 2200, 1450)]
    [InlineData("west of wall-end gap 0, against south wall", 3660, 0)]
    public void A_place_fixes_x_and_y_once_each(string place, double west, double south)
    {
        var plan = PlanTexts.Whole(PlanTexts.TwoRooms + $"""
            station tank "Tank" in wet
              size 1200 x 1200 x 900
              place at 2200, 2000
            station wall-end "Marker" in wet
              size 1300 x 500 x 900
              place against east wall, 100 from south
            station thing "Thing" in wet
              size 1000 x 500 x 900
              place {place}
            """);
        var box = plan.Stations.Single(s => s.Id == "thing").Bounds;
        Assert.Equal(
            (west, south, 1000.0, 500.0), (box.West.Millimetres, box.South.Millimetres, box.Width.Millimetres, box.Depth.Millimetres));
    }

    [Fact]
    public void Feet_and_fractions_of_inches_are_exact()
    {
        var plan = PlanTexts.Whole("""
            plan "Feet"
              units feet
            shell shed 30 ft x 12 ft x 8 ft
              walls 4 in
            room all "All" dry from west to east
            station a "A" in all
              size 2'-6 1/64" x 2 ft x 3 ft
              place against south wall, 1'-0 3/8" from west
            station b "B" in all
              size 1 ft x 1 ft x 3 ft
              place against south wall, east of a gap 5/16"
            """);
        const long SixtyFourths = 396_875;
        Assert.Equal(((12 * 64) + 24 + (30 * 64) + 1 + 20) * SixtyFourths, plan.Stations[1].Bounds.West.Nanometres);
    }

    [Fact]
    public void A_longer_bench_moves_all_that_stands_east_of_it()
        => Gen.Int[600, 1400].Sample(width =>
        {
            var stations = Row(width).ToDictionary(s => s.Id);
            Assert.Equal(100 + width + 50, stations["b"].Bounds.West.Millimetres);
            Assert.Equal(100 + width + 50 + 400 + 50, stations["c"].Bounds.West.Millimetres);
            Assert.Equal(100 + width + 50 + 400 + 50 + 150, (stations["d"].Bounds.West + (stations["d"].Bounds.Width / 2)).Millimetres);
        });

    [Fact]
    public void A_turned_station_is_placed_by_its_turned_size_and_a_kind_turns_with_its_sides()
    {
        var plan = PlanTexts.Whole(PlanTexts.TwoRooms + """
            kind bench "Bench"
              size 1500 x 600 x 900
              worker south
              clear east 700 "lid"
            station b "B" like bench in wet
              turned 90
              place corner north-east
            station c "C" in wet
              size 1500 x 600 x 900
              turned 270
              worker east
              place corner south-west
            """);
        var b = plan.Stations[0];
        Assert.Equal((600.0, 1500.0), (b.Bounds.Width.Millimetres, b.Bounds.Depth.Millimetres));
        Assert.Equal(Side.West, Assert.Single(b.Workers).Stands);
        Assert.Equal(Side.South, Assert.Single(b.Clears).Side);
        Assert.Equal(Side.East, Assert.Single(plan.Stations[1].Workers).Stands);
    }

    [Fact]
    public void A_round_station_has_a_round_footprint_and_a_square_of_bounds()
    {
        var tank = Assert.Single(PlanTexts.Whole(PlanTexts.TwoRooms + """
            station tank "Tank" in wet
              round 1100 x 950
              place corner south-west
            """).Stations);
        Assert.Equal(1100, tank.Diameter!.Value.Millimetres);
        Assert.Equal(Math.PI * 550 * 550, tank.Footprint.Area, 0.01 * Math.PI * 550 * 550);
        Assert.Equal(950, tank.Top.Millimetres);
    }

    [Fact]
    public void In_a_stepped_room_a_thing_meets_the_step_that_it_stands_under()
    {
        var plan = PlanTexts.Whole(PlanTexts.TwoRooms + """
            room lobby "Lobby" staff area 1500 x 1200, in wet, corner north-west
            station under "Under the lobby" in wet
              size 800 x 500 x 900
              place against north wall, 200 from west
            station beside "Beside the lobby" in wet
              size 800 x 500 x 900
              place against north wall, east of lobby gap 100
            station west "On the west wall" in wet
              size 500 x 500 x 900
              place against west wall, against north wall
            """);
        Assert.Equal(4000 - 1200 - 80 - 500, plan.Stations[0].Bounds.South.Millimetres);
        Assert.Equal((1500.0 + 80 + 100, 3500.0), (plan.Stations[1].Bounds.West.Millimetres, plan.Stations[1].Bounds.South.Millimetres));
        Assert.Equal((0.0, 4000.0 - 1280 - 500), (plan.Stations[2].Bounds.West.Millimetres, plan.Stations[2].Bounds.South.Millimetres));
    }

    [Theory]
    [InlineData("762", 706)]
    [InlineData("610", 1010)]
    public void Two_benches_along_both_walls_leave_the_aisle_of_the_fit_arithmetic(string depth, double aisle)
    {
        // Layout rules, fit arithmetic: 2330 - 2 x 50 = 2230; two benches of 762 leave 706, of 610 leave 1010.
        var stations = PlanTexts.Whole($"""
            plan "Aisle"
            shell container 40 ft high-cube
              lining walls 50
            room all "All" dry from west to east
            station a "A" in all
              size 1500 x {depth} x 900
              place against north wall, 100 from west
            station b "B" in all
              size 1500 x {depth} x 900
              place against south wall, 100 from west
            """).Stations;
        Assert.Equal(aisle, (stations[0].Bounds.South - stations[1].Bounds.North).Millimetres);
    }

    private static IReadOnlyList<Station> Row(int width) => PlanTexts.Whole(PlanTexts.TwoRooms + $"""
        station d "D" in wet
          size 200 x 200 x 900
          place in line with c, against north wall
        station c "C" in wet
          size 300 x 400 x 900
          place against south wall, east of b gap 50
        station b "B" in wet
          size 400 x 400 x 900
          place against south wall, east of a gap 50
        station a "A" in wet
          size {width} x 400 x 900
          place against south wall, 100 from west
        """).Stations;
}
