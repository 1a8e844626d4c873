using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Power.Sizes;
using Floorplan.Sizing.Sizes;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Sizes;

/// <summary>The subject Power of whole plans: each value worked out by hand from the tables that it names.</summary>
public sealed class PowerSizesTests
{
    /// <summary>
    /// US: 1.5 hp at 230 V draws 10 A (NEC Table 430.248), so 2.3 kVA and not the 1.12 kW of its shaft; conductor for 12.5 A, breaker
    /// 2.5 x 10 A. A tank of 6 kW: 26.1 A, x 1.25 = 32.6 A, breaker 35 A, 8 AWG. An outlet with nothing named: 180 VA.
    /// </summary>
    [Fact]
    public void US_circuits_by_the_tables_of_the_code()
    {
        var design = Design(Us("""
            station plucker "Plucker" in pack
              size 700 x 700 x 1000
              place against north wall, 1000 from west
              needs power 230 V 1.5 hp
              circuit 2
            station scald "Scald tank" in pack
              size 700 x 700 x 1000
              place against north wall, 3000 from west
              needs power 230 V 6 kW
            outlet x1 in pack, south wall, 2400 from west, height 1100, 20 A 120 V, gfci
            """));

        var motor = design.Circuits.Single(c => c.Name == "2");
        Assert.False(motor.IsProposed);
        Assert.Equal((10, 25, "14 AWG"), (motor.Current.Value, motor.Breaker!.Value, motor.Conductor!.Text));
        var tank = design.Circuits.Single(c => c.Loads[0].Id == "scald");
        Assert.True(tank.IsProposed);
        Assert.Equal("1", tank.Name);
        Assert.Equal((35, "8 AWG"), (tank.Breaker!.Value, tank.Conductor!.Text));
        var outlet = design.Circuits.Single(c => c.Loads[0].Id == "x1");
        Assert.Equal((20, "12 AWG", "GFCI"), (outlet.Breaker!.Value, outlet.Conductor!.Text, outlet.Guard));
        Assert.Equal(2300 + 6000 + 180, design.Connected.Value, 6);

        // NEC 220.56: two machines count whole; a quarter of the largest motor more.
        Assert.Equal(8480 + (0.25 * 2300), design.Demand.Value, 6);
    }

    /// <summary>
    /// The panel is on the east wall at 5800 east and 1500 north, 1500 high; the middle of the tank is at 3350 east and 2650 north,
    /// 1000 high; the ceiling is at 2600. The cable is 1100 + 2450 + 1150 + 1600 = 6300 mm, 20.67 ft: 2 x 26.087 x 0.764 x 20.67 / 1000
    /// of 230 V.
    /// </summary>
    [Fact]
    public void The_drop_along_the_walls()
    {
        var design = Design(Us("""
            station scald "Scald tank" in pack
              size 700 x 700 x 1000
              place 3000 from west, 2300 from south
              needs power 230 V 6 kW
            """));

        var tank = Assert.Single(design.Circuits);
        Assert.Equal(6300, tank.Length!.Value, 6);
        Assert.Equal(2 * (6000 / 230.0) * 0.764 * (6300 / 304.8) / 1000 / 230, tank.Drop!.Value, 9);
    }

    /// <summary>
    /// By the IEC way: 4.4 kW at 230 V is 19.1 A, device 20 A; a cable in a pipe (method B2) of 2.5 mm2 carries 23 A at 30 C and 20.0 A
    /// at 40 C (0.87), so it needs 2.5 mm2 in the cool and 2.5 mm2 just so in the warm; at 45 C (0.79) 4 mm2.
    /// </summary>
    [Theory]
    [InlineData(28, "2.5 mm²")]
    [InlineData(40, "2.5 mm²")]
    [InlineData(45, "4 mm²")]
    public void A_metric_heater_in_warmer_air(int summer, string cable)
    {
        var design = Design($"""
            plan "Heater"
              units metric
              code eu
              climate -5 C, {summer} C 40 %
            {Shed}
            panel p1 in pack, east wall, 1500 from south, height 1500, 63 A 230 V single-phase
            heater wh1 in pack, west wall, 300 from north, 4.4 kW 230 V 80 L
            """);

        var heater = Assert.Single(design.Circuits);
        Assert.Equal(20, heater.Breaker!.Value);
        Assert.Equal(cable, heater.Conductor!.Text);
    }

    /// <summary>BS 7671 411.3.3: sockets to 32 A get 30 mA, larger ones not; 16 A at least and 2.5 mm2, common practice.</summary>
    [Fact]
    public void Sockets_get_30_mA()
    {
        var design = Design(Metric("""
            outlet x1 in pack, south wall, 2000 from west, height 1100, 16 A 230 V, rcd, circuit 1
            outlet x2 in pack, south wall, 3000 from west, height 1100, 63 A 400 V three-phase, circuit 2
            outlet x3 in pack, south wall, 4000 from west, height 1100
            """));

        Assert.Equal(["30 mA", "", "30 mA"], design.Circuits.Select(c => c.Guard));
        Assert.Equal(["2.5 mm²", "25 mm²", "2.5 mm²"], design.Circuits.Select(c => c.Conductor!.Text));
        Assert.Equal([16, 63, 16], design.Circuits.Select(c => c.Breaker!.Value));
    }

    /// <summary>
    /// 3 kW, 2 kW, 2 kW and 1 kW single-phase on three lines of 230 V: the largest go first, the last to the line with least. 3, 2,
    /// 2 + 1: the fullest carries 3 of 8 kW, 12.5 % over the mean of 2.667.
    /// </summary>
    [Fact]
    public void Single_phase_circuits_are_shared_out_to_three_lines()
    {
        var panel = Assert.Single(Design(Metric(Machines("230 V", 1, 3, 2, 2))).Panels);

        Assert.Equal(3, panel.System.Lines);
        Assert.Equal([3000, 3000, 2000], PanelBalance.Sums(panel.System, panel.Ways).OrderDescending().Select(v => Math.Round(v)));
        Assert.Equal(0.125, panel.Uneven.Value, 9);

        // Demand 3 + 0.8 x 2 + 0.6 x 3 = 6.4 kW; of it 3/8 on 231 V.
        Assert.Equal(6400, panel.Demand.Value, 6);
        Assert.Equal(6400 * 3 / 8.0 / (400 / Math.Sqrt(3)), panel.Current.Value, 6);
    }

    /// <summary>In a US panel of 240 V a machine of 240 V hangs on both lines, those of 120 V on one each.</summary>
    [Fact]
    public void A_US_panel_has_two_lines()
    {
        var panel = Assert.Single(Design(Us(Machines("240 V", 4) + "\n" + Machines("120 V", 1, 1))).Panels);

        Assert.Equal([3000, 3000], PanelBalance.Sums(panel.System, panel.Ways).Select(v => Math.Round(v)));
        Assert.Equal(0, panel.Uneven.Value, 9);
    }

    /// <summary>5.5 kW is 7.38 hp: 11.3 A at 400 V; start 6 x 7.83 kVA = 47.0 kVA, and 20 kVA dips 26.1 %: worked out by hand.</summary>
    [Fact]
    public void The_generator_bears_the_start_of_the_largest_motor()
    {
        var generator = Design(Metric("""
            station mill "Mill" in pack
              size 700 x 700 x 1000
              place against north wall, 3000 from west
              needs power 400 V 7.375 hp three-phase
            """)).Generator;

        Assert.Equal(46_973, generator.Start!.Value, 0);
        Assert.Equal(20_000, generator.Size!.Value, 6);
        Assert.Equal(0.261, generator.Dip!.Value, 3);
    }

    /// <summary>A figure of the plan is told, never made up: no power, no panel, no day.</summary>
    [Fact]
    public void What_is_not_said_is_named_with_what_to_write()
    {
        var subject = Subject($"""
            plan "Unsaid"
              units metric
            {Shed}
            station mill "Mill" in pack
              size 700 x 700 x 1000
              place against north wall, 3000 from west
              needs power
            """);

        Assert.Contains(subject.Missing, m => m.What == "power of mill" && m.Write.StartsWith("needs power", StringComparison.Ordinal));
        Assert.Contains(subject.Missing, m => m.What.StartsWith("place of the panel", StringComparison.Ordinal));
        Assert.Contains(subject.Missing, m => m.What == "load through the day");
    }

    [Fact]
    public void A_plan_without_power_has_no_such_subject() => Assert.Null(CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Dark"
          units metric
        {Shed}
        light pack 300 lux
        """)).PowerSizes);

    /// <summary>
    /// Lumen method (CIBSE): 350 lux over 17.4 m2 with a third of the light used and kept is about 18 000 lm: four to five battens of
    /// 4000 lm, which draw 40 W each.
    /// </summary>
    [Fact]
    public void Lamps_draw_what_the_light_asks()
    {
        var design = Design(Metric("light pack 350 lux"));
        Assert.Equal(4 * 40, design.Connected.Value, 6);
        Assert.True(design.Circuits.Single().IsLight);
    }

    /// <summary>More load on a circuit never gives a smaller breaker, cable or generator.</summary>
    [Theory]
    [InlineData("us", "240 V")]
    [InlineData("eu", "230 V")]
    public void More_load_never_asks_for_less(string code, string volts)
    {
        var last = (Breaker: 0.0, Area: 0.0, Generator: 0.0);
        for (double kilowatts = 0.5; kilowatts < 20; kilowatts += 0.5)
        {
            var design = Design(code == "us" ? Us(Machines(volts, kilowatts)) : Metric(Machines(volts, kilowatts)));
            var circuit = design.Circuits.Single();
            var now = (circuit.Breaker!.Value, circuit.Conductor!.Value, design.Generator.Size!.Value);
            Assert.True(now.Item1 >= last.Breaker && now.Item2 >= last.Area && now.Item3 >= last.Generator);
            last = now;
        }
    }

    /// <summary>Hostile numbers: nothing is NaN or infinite, and what is beyond the tables is told.</summary>
    [Theory]
    [InlineData("needs power 0 V 1 kW")]
    [InlineData("needs power 0.0000001 V 10000 kW")]
    [InlineData("needs power 1000 V 0 kW")]
    [InlineData("needs power 230 V 13000 hp")]
    [InlineData("needs power 230 V 0 A")]
    [InlineData("needs power 400 V 10000 A three-phase")]
    public void Hostile_numbers_are_borne(string needs)
    {
        foreach (string text in new[] { Us(Station(needs)), Metric(Station(needs)) })
        {
            var facts = CheckedPlan.Facts(CheckedPlan.Plan(text));
            Assert.All(facts.PowerSizes!.Figures, f => Assert.True(double.IsFinite(f.Value), f.ToString()));
            Assert.DoesNotContain(facts.PowerSizes!.Figures, f => f.Text.Contains("NaN", StringComparison.Ordinal));
        }
    }

    private static string Station(string needs) => $"""
        station mill "Mill" in pack
          size 700 x 700 x 1000
          place against north wall, 3000 from west
          {needs}
        """;

    private static string Machines(string volts, params double[] kilowatts) => string.Join('\n', kilowatts.Select((kw, i)
        => FormattableString.Invariant($"""
        station m{volts[0]}{i} "Machine {i}" in pack
          size 400 x 400 x 1000
          place {200 + (i * 500)} from west, {(volts[0] == '1' ? 1500 : 200)} from south
          needs power {volts} {kw} kW
        """)));

    private static PowerDesign Design(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text)).PowerDesign!;

    private static SizedSubject Subject(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text)).PowerSizes!;

    private const string Shed = """
        shell shed 6000 x 3200 x 2600
          walls 100
          lining walls 0, ceiling 0, floor 0
        room pack "Packing" dry from west to east
        """;

    private static string Us(string more) => $"""
        plan "US"
          units metric
          code us
        {Shed}
        panel p1 in pack, east wall, 1500 from south, height 1500, 100 A 240 V single-phase
        {more}
        """;

    private static string Metric(string more) => $"""
        plan "Metric"
          units metric
          code eu
        {Shed}
        panel p1 in pack, east wall, 1500 from south, height 1500, 63 A 400 V three-phase
        {more}
        """;
}
