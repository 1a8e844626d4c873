using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.LightAndAir;

/// <summary>Rooms with an open tank of hot water that no exhaust draws air from.</summary>
internal sealed class SteamWithoutExtract : Rule
{
    public override string Name => "steam-without-extract";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "A tank of hot water stands open in a room, and no exhaust draws the steam out.";

    public override string Why
        => "Steam wets the ceiling and drips on the product, rusts steel and hides the work. It fills a box in minutes.";

    public override string Mend => "Put an exhaust over the tank: `air exhaust ROOM`. Let as much air in at the clean end.";

    public override string? Caution => "Fans are electric work near water: a licensed electrician does it; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("9 CFR 416.2(d), US CFR: ventilation that controls steam and condensation", Origin.FromMemory, Force.Law),
        new("heat and vapour of open tanks, ASHRAE", Origin.FoundInPublicCopy, Force.Measured),
    ];

    public override string Bad => """
        plan "Steam room"
          units metric
        shell shed 6000 x 4000 x 2600
        room scald "Scalding" dirty from west to east
        door d1 scald to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        drain fd1 floor in scald, 2000 from west, 2500 from south, 100
        sink s1 hand in scald, 400 x 350, against north wall, 3000 from west
        water w1 cold hot in scald, north wall, 2400 from west, height 1200
        station tank "Scald tank" in scald
          size   900 x 700 x 900
          place  against north wall, 1500 from west
          worker south
          work   10 s each
          stays  1 min
          holds  4 birds
          needs  hot 8 L/min at 60 C, drain
          air    gap 50
        air supply scald
        """;

    public override IReadOnlyList<LineChange> Mended => [new("air supply", "air supply scald, exhaust scald")];

    public override bool AppliesTo(Plan plan) => plan.Stations.Any(s => s.Needs.Any(n => n.Kind is NeedKind.HotWater or NeedKind.Power));

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var tanks in context.Facts.HotTanks.GroupBy(t => t.Station.Room.Id))
        {
            if (context.Facts.Air[tanks.Key].HasExhaust)
            {
                continue;
            }

            var hottest = tanks.MaxBy(t => t.Celsius)!;
            var room = hottest.Station.Room;
            string line = $"air exhaust {room.Id}";
            var fan = context.Plan.Services.OfType<AirPoint>().FirstOrDefault(a => a.Room?.Id == room.Id);
            yield return CheckContext.Find(
                this, Severity.Warning, [room.Id, hottest.Station.Id],
                $"{Named.Of(hottest.Station)} stands open with water of {context.Temperature(hottest.Celsius)} and nothing draws the steam "
                    + $"out of {Named.Of(room)}",
                $"add a line such as: {line}", fan?.Span ?? hottest.Station.Span, hottest.Station.Footprint.Centroid.Coordinate) with
            { NewLine = line };
        }
    }
}
