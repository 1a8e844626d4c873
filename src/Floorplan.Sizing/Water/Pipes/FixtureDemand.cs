using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>How much water fixtures draw at once, by their water supply fixture units: flush tanks predominate.</summary>
internal static class FixtureDemand
{
    /// <summary>Fixture units and US gallons a minute.</summary>
    private static readonly (double Units, double Gpm)[] Pairs =
    [
        (0, 0), (1, 3), (2, 5), (3, 6.5), (4, 8), (5, 9.4), (6, 10.7), (7, 11.8), (8, 12.8), (9, 13.7), (10, 14.6), (11, 15.4), (12, 16),
        (13, 16.5), (14, 17), (15, 17.5), (16, 18), (17, 18.4), (18, 18.8), (19, 19.2), (20, 19.6), (25, 21.5), (30, 23.3), (35, 24.9),
        (40, 26.3), (45, 27.7), (50, 29.1), (60, 32), (70, 35), (80, 38), (90, 41), (100, 43.5), (120, 48), (140, 52.5), (160, 57),
        (180, 61), (200, 65), (225, 70), (250, 75), (275, 80), (300, 85), (400, 105), (500, 124), (750, 170), (1000, 208), (1250, 239),
        (1500, 269), (1750, 297), (2000, 325), (2500, 380), (3000, 433), (4000, 525), (5000, 593),
    ];

    public static Source Source { get; } = new(
        "IPC 2021 Appendix E Table E103.3(3), flush tanks; straight line between its rows is common practice", Origin.FoundInSecondaryCopy,
        Force.ModelCode);

    /// <summary>US gallons a minute; above the table in proportion to its last row.</summary>
    public static double Gpm(double units)
    {
        if (!(units > 0))
        {
            return 0;
        }

        for (int i = 1; i < Pairs.Length; i++)
        {
            var (from, to) = (Pairs[i - 1], Pairs[i]);
            if (units <= to.Units)
            {
                return from.Gpm + ((units - from.Units) / (to.Units - from.Units) * (to.Gpm - from.Gpm));
            }
        }

        return units * Pairs[^1].Gpm / Pairs[^1].Units;
    }
}
