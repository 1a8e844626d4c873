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

    /// <summary>What a stretch of a way costs that is looked at for gaps. Own estimate.</summary>
    internal const int Stretch = 200;

    /// <summary>What one leg of a flow costs besides its search. Own estimate.</summary>
    internal const int Leg = 300;

    /// <summary>What a letter costs to read. Measured.</summary>
    private const int Letter = 15;

    /// <summary>What an overlay costs besides for each point of its two shapes. Own estimate.</summary>
    private const int OverlayPoint = 50;

    [ThreadStatic]
    private static long taken;

    /// <summary>All work of this thread: what is taken, and what is done beside.</summary>
    [ThreadStatic]
    private static long all;

    /// <summary>Where the work that runs on this thread is broken off, as a reading of <see cref="all"/>; 0 for nowhere.</summary>
    [ThreadStatic]
    private static long end;

    /// <summary>Since the thread began; only the difference of two readings means anything.</summary>
    public static long Taken => taken;

    public static void Take(long steps)
    {
        taken += steps;
        Beside(steps);
    }

    /// <summary>
    /// Counts work that is no search. It counts where work is broken off, and not in <see cref="Taken"/>, which says how many small
    /// changes of a text are tried.
    /// </summary>
    public static void Beside(long steps)
    {
        all += steps;
        if (end > 0 && all > end)
        {
            throw new WorkEndedException();
        }
    }

    /// <summary>Counts an overlay of shapes with so many points.</summary>
    internal static void BesideOverlay(int points) => Beside(Overlay + ((long)OverlayPoint * points));

    /// <summary>What reading a text to a plan costs.</summary>
    public static long ToRead(string text) => (long)Letter * text.Length;

    /// <summary>
    /// Does work that is broken off where it takes more steps than it may. Work inside other such work ends with it, if that ends
    /// sooner. Only what is done on this thread counts.
    /// </summary>
    /// <returns>Whether the work was done to its end.</returns>
    public static bool Within(long most, Action work)
    {
        long outer = end;
        long own = all + most;
        bool endsFirst = outer == 0 || own <= outer;
        end = endsFirst ? own : outer;
        try
        {
            work();
            return true;
        }
        catch (WorkEndedException) when (endsFirst)
        {
            return false;
        }
        finally
        {
            end = outer;
        }
    }

    /// <summary>Leads out of work, however deep it is, to <see cref="Within"/>; nobody else sees it.</summary>
    private sealed class WorkEndedException : Exception;
}
