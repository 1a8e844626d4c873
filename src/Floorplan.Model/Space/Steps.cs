namespace Floorplan.Model.Space;

/// <summary>
/// Counts the work of searches on this thread, in steps of about the time that one edge takes in the search for poses. What may go on
/// for long is ended by steps and not by the clock, so that a plan has the same answer on any machine.
/// </summary>
public static class Steps
{
    /// <summary>What one corner of free floor costs in cutting and laying the mesh. Measured.</summary>
    internal const int Corner = 150;

    /// <summary>What one stretch of an edge costs in the search for the shortest way. Measured.</summary>
    internal const int Way = 15;

    /// <summary>What the common part of two shapes costs. Measured.</summary>
    internal const int Overlay = 1000;

    [ThreadStatic]
    private static long taken;

    /// <summary>Since the thread began; only the difference of two readings means anything.</summary>
    public static long Taken => taken;

    public static void Take(long steps) => taken += steps;
}
