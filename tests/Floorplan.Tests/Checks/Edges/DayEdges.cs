using Floorplan.Sizing.Simulation.Line;
using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

/// <summary>
/// Figures of the day. Ways and hands add seconds to what a plan says; where that matters, a plan with a round figure is run first and
/// what it has more is taken off.
/// </summary>
internal static class DayEdges
{
    private const double Second = 1 / 60.0;

    /// <summary>Of what is measured first, in minutes.</summary>
    private const double Rounding = 0.001;

    public static IReadOnlyList<Edge> All { get; } =
    [
        LeastStay("bleeding 90 s before scalding: Quebec P-29, r.1, 6.4.3", 1.5, "Bleeding cones", 60) with { Set = ("80 s", "2 min") },
        LeastStay("soft scald 50 to 53 C, 120 s: Barbut 2002, quoted", 2, "Scald tank", 52),
        LeastStay("sub-scald 54 to 58 C, 60 s: DVS poultry code 2017, quoted", 1, "Scald tank", 56),
        LeastStay("hard scald 59 to 64 C, 45 s: Barbut 2002, quoted", 0.75, "Scald tank", 60),
        LeastStay("63 C for 30 min: Reg (EC) 853/2004; from memory", 30, "Pasteuriser", 63),
        LeastStay("72 C for 15 s: Reg (EC) 853/2004; from memory", 0.25, "Pasteuriser", 72),
        new("chill-too-slow", "under 4 lb 4 h: former 9 CFR 381.66(b)(2)", 240, 240.1, m => Chilled(1.8, m), "tank"),
        new("chill-too-slow", "4 to 8 lb 6 h", 360, 360.1, m => Chilled(2.5, m), "tank"),
        new("chill-too-slow", "over 8 lb 8 h", 480, 480.1, m => Chilled(3.7, m), "tank"),
        new("chill-too-slow", "43 min, give or take 8, in ice water: trial of birds of 0.9 to 1.6 kg", 35, 35 - Second, InIce, "tank")
        {
            Set = ("30 min", "40 min"),
        },
        new("queue-overflows", "half as long again (own assumption)", 50, 50.1, Overtime, "rail") { Set = ("60 %", "40 %"), Within = 0.05 },
        new("crew-overworked", "11 % for rest: Niebel, ILO", 89, 89.2, Busy, "pack") { Set = ("92 %", "85 %"), Within = 0.1 },
        new("crew-overworked", "6 h without a break: Directive 2003/88/EC, article 4; from memory", 360, 360.1, LongDay, "pack"),
    ];

    private static Edge LeastStay(string figure, double minutes, string label, double celsius)
        => new("not-long-enough", figure, minutes, minutes - Second, m => Stay(label, m, celsius), "tank");

    private static string Stay(string label, double minutes, double celsius = 60) => Line(
        "birds, 2 kg each", 20, $"""
        station tank "{label}" in pack
          size 900 x 600 x 900
          place against north wall, 1500 from west
          stays {Invariant($"{minutes * 60:0.###}")} s
          holds 200 birds
          needs hot 4 L/min at {Invariant($"{celsius}")} C, drain
        """);

    private static string InIce(double minutes)
        => Stay("Chill tank", minutes).Replace("needs hot", "needs ice, hot", StringComparison.Ordinal);

    private static string Chilled(double kilograms, double minutes)
    {
        return Of(minutes - Rounding - (Measured(Of(60)).TimeOnLine / Ticks.Minute) + 60);

        string Of(double stay)
            => Stay("Chill tank", stay).Replace("2 kg each", Invariant($"{kilograms} kg each"), StringComparison.Ordinal);
    }

    /// <summary>Three come at a time: one is in the machine, one before it, and the third waits on the rail.</summary>
    private static string Overtime(double percent)
    {
        const double Stay = 100;
        double Share(double cycle) => Measured(Of(cycle)).Steps[1] is var rail ? rail.BlockedTime / 42 / Ticks.FromSeconds(Stay) * 100 : 0;
        double slope = (Share(160) - Share(150)) / 10;
        return Of(150 + ((percent - 0.01 - Share(150)) / slope));

        string Of(double cycle) => Line("birds, 2 kg each", 21, $"""
            station rail "Rail" in pack
              size 900 x 600 x 900
              place against north wall, 1500 from west
              stays {Invariant($"{Stay}")} s
              holds 8 birds
            station tank "Machine" in pack
              size 900 x 600 x 900
              place against north wall, 3000 from west
              batch 1 birds
              cycle {Invariant($"{cycle:0.######}")} s
            """, "rail -> tank -> rack by chute", "arrives 3 birds");
    }

    private static string Busy(double percent)
    {
        (double low, double high) = (1, 200);
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            var run = Measured(Of(middle));
            bool isLess = 100.0 * (run.End - run.People[0].Waiting) / run.People[0].Until < percent;
            (low, high) = isLess ? (middle, high) : (low, middle);
        }

        return Of(low);

        static string Of(double work) => Work(20, Invariant($"work {work:0.######} s each"), "hand wash 1 s");
    }

    private static string LongDay(double minutes)
    {
        double rest = Measured(Of(60)).People[0].Until / (double)Ticks.Minute;
        return Of(minutes - Rounding - rest);

        static string Of(double startUp)
            => Work(20, "work 20 s each", Invariant($"start-up {startUp - 10:0.######} min\n  wash-down 10 min"));
    }

    private static string Work(int perHour, string work, string day) => Line(
        "crates, 8 kg each", perHour, $"""
        station tank "Bench" in pack
          size 900 x 600 x 900
          place against north wall, 1500 from west
          worker south
          {work}
        """, "tank -> rack by chute", day);

    private static LineOutcome Measured(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.Paced!;

    private static string Line(
        string product, int perHour, string stations, string way = "tank -> rack by chute", string day = "hand wash 40 s") => Invariant($"""
        plan "Edge"
          units metric
          code eu
          product {product}
        shell shed 8000 x 5000 x 2700
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        {stations}
        store rack "Rack" in pack
          size 1800 x 500 x 1500
          place against south wall, 4000 from west
          holds 1000 kg
        flow product
          {way}
        day
          target {perHour} {product.Split(',')[0]}/h for 2 h
          crew pack 1
          {day}
          elsewhere 1 toilet, changing room
        """);
}
