namespace Floorplan.Checks.Rules.TheDay;

/// <summary>One small line for the examples of this folder: crates come in, are worked at a bench and put on a rack.</summary>
internal static class DayExamples
{
    /// <param name="work">Lines of the bench.</param>
    /// <param name="store">Lines of the rack.</param>
    public static string Line(string work, string store, int crew) => $$"""
        plan "Crate shed"
          units metric
          product crates, 8 kg each
        shell shed 8000 x 5000 x 2700
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        station bench "Work bench" in pack
          size 1200 x 600 x 900
          place against north wall, 1500 from west
          worker south
        {{work}}
        store rack "Rack" in pack
          size 1800 x 500 x 1500
          place against north wall, 4000 from west
        {{store}}
        flow product
          outside -> d1 -> bench -> rack by hand
        day
          target 100 crates/h for 2 h
          crew pack {{crew}}
          elsewhere 1 toilet, changing room
        """;
}
