namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The small plan that this folder's examples are made from, so that each example shows only what differs. Invented.</summary>
internal static class WetBox
{
    /// <summary>One washed room with a rinse bench; the rest of the plan follows.</summary>
    public static string With(
        string title, string rest, string code = "us", string floor = "60", string needs = "cold 8 L/min, drain") => $"""
        plan "{title}"
          units metric
          code {code}
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor {floor}
          doors west
          ground 500 below floor
        room rinse "Rinse room" dirty from west to east
        door d1 rinse to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself, opens from inside, steps 3
        station bench "Rinse bench" in rinse
          size 1400 x 600 x 900
          place against north wall, 100 from west
          worker south
          needs {needs}
        sink s1 hand in rinse, 400 x 350, against south wall, 2000 from west
        {rest}
        """;
}
