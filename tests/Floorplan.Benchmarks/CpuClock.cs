namespace Floorplan.Benchmarks;

/// <summary>Processor time of this process in milliseconds: other work on the machine disturbs it less than it does wall time.</summary>
internal static class CpuClock
{
    public static double Now => Environment.CpuUsage.TotalTime.TotalMilliseconds;
}
