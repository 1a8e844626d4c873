namespace Floorplan.Sizing.Simulation.Engine.States;

/// <summary>One station that the product comes to more than once: its places and hands serve every time.</summary>
/// <param name="times">A step for each time, in their order.</param>
internal sealed class StationState(IReadOnlyList<StepState> times)
{
    public IReadOnlyList<StepState> Times => times;

    public int Hands => times.Sum(t => t.Hands);

    public int Taken => times.Sum(t => t.Taken);

    /// <summary>Share of the places with a job in them.</summary>
    public double Used => times.Sum(Of);

    /// <summary>The product of the last job; -1 before the first.</summary>
    public int Last { get; set; } = -1;

    /// <summary>Share of the places that are free for what comes, and not waited for by others without room of their own.</summary>
    public double Free(ProductAtStep own) => 1 - Used - times.Sum(t => Over(t, own));

    /// <summary>The same where the product comes once.</summary>
    public static double Free(StepState alone, ProductAtStep own) => 1 - Of(alone) - Over(alone, own);

    private static double Of(StepState step)
    {
        double used = 0;
        for (int p = 0; p < step.Products; p++)
        {
            used += (double)step.At(p).Taken / step.Of(p).Places;
        }

        return used;
    }

    private static double Over(StepState step, ProductAtStep own)
    {
        double over = 0;
        for (int p = 0; p < step.Products; p++)
        {
            var at = step.At(p);
            over += at == own ? 0 : Math.Max(0, at.Usual - at.Step.Waits) / ((double)at.Step.Places * at.Step.Batch);
        }

        return over;
    }
}
