namespace Floorplan.Sizing.Bodies;

/// <summary>
/// Measured bodies in mm, barefoot, at the percentiles of <see cref="Percentiles"/>: ANSUR II, Gordon and others, NATICK/TR-15/007, 2014,
/// computed from the public data of 4082 men and 1986 women.
/// </summary>
internal static class BodyTable
{
    public static IReadOnlyList<double> Percentiles { get; } = [1, 2.5, 5, 10, 25, 50, 75, 90, 95, 97.5, 99];

    private static readonly Dictionary<BodyMeasure, (double[] Women, double[] Men)> Rows = new()
    {
        [BodyMeasure.Stature] = (
            [1482.5, 1504.2, 1525, 1547, 1586.2, 1626, 1672, 1713, 1740, 1758.4, 1777.6],
            [1601.6, 1627, 1648, 1669, 1710, 1755, 1802, 1844, 1870, 1897, 1927]),
        [BodyMeasure.ThumbTipReach] = (
            [651, 665, 674.2, 691, 715, 742, 772, 801, 816, 831.4, 852],
            [716, 729, 742, 757, 782, 811, 838, 868, 886, 902, 922.2]),
        [BodyMeasure.ShoulderHeight] = (
            [1201.8, 1223.6, 1242, 1262, 1298, 1332, 1374, 1411, 1433.8, 1453.4, 1473],
            [1296.8, 1321, 1339, 1361, 1398, 1439, 1481, 1521, 1546, 1570, 1596.2]),
        [BodyMeasure.ElbowHeight] = (
            [921.9, 937, 951, 966, 994.2, 1022, 1053, 1083, 1100, 1116, 1132.2],
            [991, 1009, 1025, 1042, 1071, 1104, 1138, 1170, 1190, 1210, 1228.2]),
        [BodyMeasure.FingertipsUp] = (
            [1864.7, 1890, 1926, 1960, 2016, 2078, 2147, 2214, 2253, 2273.4, 2306.2],
            [2034.2, 2067, 2097, 2130, 2194.2, 2263, 2332, 2398, 2437.9, 2473, 2518]),
        [BodyMeasure.ElbowToElbow] = (
            [407.9, 421, 432, 443, 466, 492, 520, 550, 563.8, 579, 598],
            [470.8, 484, 497.1, 514, 545, 579, 613, 646, 666.9, 683, 700]),
        [BodyMeasure.Shoulders] = (
            [388, 398, 406, 415, 430, 450, 469, 488, 499, 509.4, 522],
            [439, 450, 459, 470, 489, 509, 531, 553, 567, 580, 593]),
        [BodyMeasure.BetweenShoulders] = (
            [322, 330, 335, 342, 353, 365, 378, 389, 396, 401, 406],
            [371, 379, 384, 392, 403, 415, 428, 441, 447, 454, 463]),
        [BodyMeasure.Belly] = (
            [170.8, 178, 184, 192, 207, 227, 249, 272, 285, 298, 310],
            [185, 193, 200, 209, 227, 251, 279, 305, 320, 335, 351.2]),
    };

    /// <summary>In whole mm; between the percentiles of the table on a straight line, own assumption.</summary>
    public static double Of(BodyMeasure measure, bool woman, double percentile)
    {
        double[] row = woman ? Rows[measure].Women : Rows[measure].Men;
        int next = Enumerable.Range(0, row.Length).First(i => Percentiles[i] >= percentile);
        double from = Percentiles[Math.Max(0, next - 1)];
        double share = next == 0 ? 1 : (percentile - from) / (Percentiles[next] - from);
        double before = row[Math.Max(0, next - 1)];
        return Math.Round(before + ((row[next] - before) * share));
    }
}
