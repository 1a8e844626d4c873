namespace Floorplan.Tests.Model.Binding;

/// <summary>The whole small plan of the language guide.</summary>
internal static class GuidePlan
{
    public const string Text = """
        # A trout and char unit in a 40 ft box. Invented for this guide.
        plan "Tarn Foot fish unit"
          number    TF-01
          revision  A, 2026-11-25, "First issue for comment"
          units     metric                      # or: feet
          code      us                          # which published limits the checks start from: us, eu, none
          product   fish, 0.9 kg each

        shell container 40 ft high-cube
          lining    walls 60, ceiling 60, floor 40      # finished faces stand in from the steel by this much
          doors     west                                # the cargo doors are in the west end
          ground    600 below floor

        room receiving "Receiving"        dirty   from west to 3600
        room filleting "Filleting"        clean   from 3600 to 8400
        room lobby     "Change and wash"  staff   area 1300 x 1100, in filleting, corner north-west
        room holding   "Holding"          cold    from 8400 to east
          keep      0 C
        partitions thickness 80                          # between neighbouring rooms

        door  d1 receiving to outside,   south wall, 500 from west, 900 x 2050, swings out
        door  d2 lobby to outside,       north wall, 200 from west, 900 x 2050, swings out, closes itself
        door  d3 lobby to filleting,     east wall, 100 from north, 800 x 2050, swings filleting, closes itself
        door  d4 filleting to holding,   1000 from south, 900 x 2000, swings holding, opens from inside
        door  d5 holding to outside,     south wall, 500 from east, 900 x 2000, swings out, opens from inside
        hatch h1 receiving to filleting, 300 from south, 700 x 500, sill 950

        station tipping "Tipping table" in receiving
          size     1200 x 600 x 900
          place    against north wall, 900 from west
          worker   south
          work     6 s each
          needs    cold 12 L/min, drain
          clear    south 900 "crate trolley"

        station gutting "Gutting bench" in receiving
          size     1400 x 600 x 920
          place    against south wall, 100 from east
          workers  2 north
          work     24 s each
          needs    cold 8 L/min, drain
          waste    0.12 kg each to offal-bin

        station chill "Slush tank" in filleting
          size     1500 x 650 x 850
          place    against south wall, 100 from west
          worker   north
          work     3 s each
          holds    80 fish
          stays    30 min
          needs    cold 20 L/min, drain, ice
          weight   90 kg empty, 900 kg full

        station bench "Fillet bench" in filleting
          size     1800 x 600 x 920
          place    against north wall, east of lobby gap 100
          workers  2 south, 800 apart
          work     40 s each
          needs    cold 6 L/min, hot 4 L/min at 60 C, drain
          waste    0.40 kg each to frame-bin

        station packing "Packing table" in filleting
          size     1400 x 600 x 900
          place    against south wall, 100 from east
          worker   north
          work     15 s each
          needs    power 230 V 0.8 kW

        store rack "Shelf rack" in holding
          size     2400 x 500 x 1800
          place    against north wall, 300 from east
          holds    5 shelves x 120 fish

        bin   offal-bin 60 L in receiving, 400 x 400, against south wall, west of gutting gap 100
        bin   frame-bin 90 L in filleting, 450 x 450, against north wall, east of bench gap 100
        sink  s1 hand in lobby, 400 x 350, against west wall, 100 from south
        water w1 cold hot in filleting, north wall, 1500 from west, height 1200
        drain fd1 floor in filleting, 2400 from west, centred, 100
        falls filleting 2 % to fd1
        hose  hz1 on w1, 7.5 m
        panel p1 in holding, south wall, 1500 from west, 100 A 230 V single-phase
        light filleting 540 lux
        air   supply filleting, exhaust receiving

        flow product
          outside -> d1 -> tipping -> gutting                by hand
          gutting -> h1 -> chill                             by hand
          chill -> bench -> packing                          by hand
          packing -> d4 -> rack -> d5 -> outside             by trolley 600 wide
        flow waste "Offal"
          gutting -> offal-bin                               by chute
          offal-bin -> d1 -> outside                         by hand, after work
        flow people "Fillet crew"
          outside -> d2 -> s1 -> d3 -> bench

        day
          target   120 fish/h for 5 h
          crew     receiving 3, filleting 4

        limit  hand-sink-too-far 4 m "agreed with the inspector on site"
        accept waste-meets-product at d1 "offal leaves after the day's work, door washed down"
        """;
}
