namespace Floorplan.Model.Binding;

/// <summary>What one plan takes of something bounded. That it is over the bound is told once, at what went over.</summary>
internal sealed class RunningTotal(long most)
{
    private long total;

    /// <returns>Whether it is still within the bound.</returns>
    public bool Add(long amount, Action tell)
    {
        bool before = total <= most;
        total += amount;
        if (before && total > most)
        {
            tell();
        }

        return total <= most;
    }
}
