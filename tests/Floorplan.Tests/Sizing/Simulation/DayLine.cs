using System.Globalization;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>A long shed with a line of birds through it, for tests of the day; each figure may be changed.</summary>
internal sealed record DayLine
{
    public int PerHour { get; init; } = 200;

    public int Hours { get; init; } = 2;

    public int Crew { get; init; } = 4;

    public string Cones { get; init; } = "work 4 s each\n  stays 2 min\n  holds 18 birds";

    public string Scald { get; init; } = "batch 8 birds\n  cycle 1 min";

    public string Pluck { get; init; } = "batch 8 birds\n  cycle 50 s";

    public string Bench { get; init; } = "work 12 s each\n  waits 16 birds";

    public string Store { get; init; } = "holds 10 shelves x 32 birds";

    public string Text => string.Create(CultureInfo.InvariantCulture, $"""
        plan "Birds"
          units metric
          product birds, 2 kg each
        shell shed 12000 x 4000 x 2700
        room kill "Kill" dry from west to east
        door d1 kill to outside, west wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        station cones "Cones" in kill
          size 1500 x 500 x 1500
          place at 1500, 3400
          workers 2 south, 700 apart
          {Cones}
        station scald "Scald tank" in kill
          size 900 x 700 x 900
          place at 3400, 3200
          worker south
          {Scald}
        station pluck "Plucker" in kill
          round 900 x 900
          place at 4600, 3000
          worker south
          {Pluck}
        station bench "Bench" in kill
          size 2400 x 600 x 900
          place at 6000, 3300
          workers 3 south, 750 apart
          {Bench}
        store rack "Rack" in kill
          size 2000 x 500 x 1800
          place at 9500, 3400
          {Store}
        flow product
          outside -> d1 -> cones -> scald -> pluck -> bench -> rack by hand 16 kg
        day
          target {PerHour} birds/h for {Hours} h
          crew kill {Crew}
          elsewhere 1 toilet, changing room
        """);

    public PlannedDay Day() => CheckedPlan.Facts(CheckedPlan.Plan(Text)).Day;
}
