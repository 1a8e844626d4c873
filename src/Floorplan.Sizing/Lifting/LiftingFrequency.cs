namespace Floorplan.Sizing.Lifting;

/// <summary>The frequency multiplier of the NIOSH equation (94-110, Table 5), with straight lines between its rows.</summary>
internal static class LiftingFrequency
{
    private const double LowHands = 30;

    private static readonly double[] Lifts = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

    /// <summary>By duration, for hands below 30 in and from 30 in up.</summary>
    private static readonly double[][] Low =
    [
        [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.80, 0.75, 0.70, 0.60, 0.52, 0.45, 0.41, 0.37, 0, 0, 0],
        [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.60, 0.50, 0.42, 0.35, 0.30, 0.26, 0, 0, 0, 0, 0],
        [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0, 0, 0, 0, 0, 0, 0],
    ];

    private static readonly double[][] High =
    [
        [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.80, 0.75, 0.70, 0.60, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
        [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.60, 0.50, 0.42, 0.35, 0.30, 0.26, 0.23, 0.21, 0, 0, 0],
        [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13, 0, 0, 0, 0, 0],
    ];

    public static double Multiplier(double perMinute, LiftingDuration duration, double originIn)
    {
        double[] row = (originIn < LowHands ? Low : High)[(int)duration];
        if (perMinute > Lifts[^1])
        {
            return 0;
        }

        int next = Array.FindIndex(Lifts, f => f >= perMinute);
        if (next <= 0)
        {
            return row[0];
        }

        double share = (perMinute - Lifts[next - 1]) / (Lifts[next] - Lifts[next - 1]);
        return row[next - 1] + ((row[next] - row[next - 1]) * share);
    }
}
