using Google.OrTools.Sat;

namespace Floorplan.Arrange;

/// <summary>A solver that gives the same answer on every machine.</summary>
internal static class RepeatableSolver
{
    /// <param name="mostWork">That it may spend, in its own repeatable measure and not in seconds.</param>
    public static CpSolver Of(double mostWork) => new()
    {
        // It would take Ctrl+C for itself and leave nobody else listening.
        StringParameters = FormattableString.Invariant(
            $"num_workers:1 random_seed:1 max_deterministic_time:{mostWork} catch_sigint_signal:false"),
    };
}
