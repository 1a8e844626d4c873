using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Gains;

/// <summary>Items an hour of a line that always has items, without its filling and running dry.</summary>
/// <param name="Half">Half of the 95 % band where work times differ from piece to piece; 0 where all times are fixed.</param>
public readonly record struct LinePace(double PerHour, double Half)
{
    /// <summary>Of the first run that locked itself; null where none did.</summary>
    public LineLock? Locked { get; private init; }

    /// <summary>Runs with other draws, where times differ.</summary>
    public const int Runs = 10;

    /// <summary>Student's t for 9 degrees of freedom, 95 %, two sides (any table).</summary>
    private const double StudentForTen = 2.262;

    public static LinePace Of(ProductLine line) => Of(line, LineRun.Of(line));

    /// <param name="first">The run with the first draws, which is made already.</param>
    public static LinePace Of(ProductLine line, LineOutcome first)
    {
        if (!line.HasSpread)
        {
            return new LinePace(first.SteadyRate, 0) { Locked = first.Locked };
        }

        List<LineOutcome> runs = [first, .. Enumerable.Range(1, Runs - 1).Select(seed => LineRun.Of(line, seed))];
        double[] rates = [.. runs.Select(r => r.SteadyRate)];
        double mean = rates.Average();
        double variance = rates.Sum(r => (r - mean) * (r - mean)) / (Runs - 1);
        return new LinePace(mean, StudentForTen * Math.Sqrt(variance / Runs)) { Locked = runs.Find(r => r.Locked is not null)?.Locked };
    }
}
