namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>A plan that says everything that a day may say.</summary>
internal static class FullDay
{
    public const string Text = """
        plan "Small birds and large ones"
          units metric
          code eu
          product quail, 0.25 kg each
          product turkeys, 8 kg each
        shell shed 12000 x 4000 x 2700
        room kill "Kill" dirty from west to 6000
        room evis "Evisceration" clean from 6000 to east
        door d1 kill to outside, west wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        door d2 evis to outside, east wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        hatch h1 kill to evis, 2000 from south, 800 x 700, sill 900
        station cones "Bleeding cones" in kill
          size   1500 x 500 x 1500
          place  against north wall, 1000 from west
          workers 2 south, 700 apart
          work   4 s each
          work   height 950
          stays  2 min
          holds  30 quail
          for turkeys work 20 s each stays 3 min holds 4
        station scald "Scald tank" in kill
          size   900 x 700 x 900
          place  against north wall, 2800 from west
          worker south
          batch  20 quail
          cycle  1 min
          needs  hot 6 L/min at 60 C, drain
          for turkeys batch 1 cycle 2 min
        station pluck "Plucker" in kill
          round  900 x 900
          place  against north wall, 4200 from west
          worker south
          batch  20 quail
          cycle  30 s
          waste  0.1 kg each to feathers
          for turkeys batch 1 cycle 50 s
        bin feathers 120 L in kill, 500 x 500 x 900, against south wall, 1500 from west
        station bench "Bench" in evis
          size   2400 x 600 x 900
          place  against north wall, 500 from west
          workers 3 south, 750 apart
          work   12 s each, spread 20 %
          pause  20 s every 25 quail
          rework 5 %
          waits  40 quail
          for turkeys work 120 s each waits 4
        station chill "Chill tank" in evis
          size   1600 x 800 x 900
          place  against south wall, 800 from west
          worker north
          work   3 s each
          stays  50 min
          holds  200 quail
          needs  ice, cold 6 L/min, drain
          for turkeys stays 3 h holds 60
        store rack "Rack" in evis
          size   2000 x 500 x 1800
          place  against south wall, 500 from east
          holds  400 quail
          for turkeys holds 60
        flow product
          outside -> d1 -> cones -> scald -> pluck -> h1 -> bench -> chill   by hand 16 kg
          chill -> rack                                                      by trolley 500 wide, takes 60 kg, 2 trolleys
        flow waste "Feathers"
          pluck -> feathers                                                  by chute
          feathers -> d1 -> outside                                          by trolley 500 wide
        day
          target     180 quail/h for 2 h
          target     10 turkeys/h for 2 h
          changeover 15 min
          crew       kill 3, evis 3
          helps      kill from evis
          arrives    60 quail
          start-up   45 min
          breaks     20 min
          hand wash  30 s
          wash-down  1 h
          elsewhere  1 toilet, changing room
        """;

    /// <summary>A station passed twice, pieces sent back, and a product with a way of its own.</summary>
    public const string Ways = """
        plan "Fish in brine"
          units metric
          product trout, 0.4 kg each
          product eels, 0.8 kg each
        shell shed 12000 x 4000 x 2700
        room prep "Preparation" dry from west to east
        door d1 prep to outside, west wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        station wash "Wash tank" in prep
          size   1500 x 600 x 900
          place  at 1500, 3300
          worker south
          batch  10 trout
          cycle  2 min
          for eels batch 5 cycle 3 min
        station bench "Bench" in prep
          size   2400 x 600 x 900
          place  at 3600, 3300
          workers 2 south, 750 apart
          work   10 s each, spread 10 %
          waits  30 trout
          rework 5 % at wash
          for eels work 20 s each waits 8
        station brine "Brine tank" in prep
          size   1600 x 800 x 900
          place  at 6600, 3200
          worker south
          stays  5 min
          holds  60 trout
          for eels holds 20
        store rack "Rack" in prep
          size   1500 x 500 x 1800
          place  at 9000, 3400
          holds  400 trout
        store box "Box" in prep
          size   900 x 500 x 900
          place  at 9000, 500
          holds  60 eels
        flow product
          outside -> d1 -> wash -> bench -> brine -> bench   by hand 4 kg
          bench -> rack                                      by trolley 500 wide, takes 10 trout
        flow product "Eels" for eels
          outside -> d1 -> wash -> bench -> box              by hand 4 kg
        day
          target 60 trout/h for 2 h
          target 30 eels/h for 1 h
          crew   prep 3
          elsewhere 1 toilet, changing room
        """;
}
