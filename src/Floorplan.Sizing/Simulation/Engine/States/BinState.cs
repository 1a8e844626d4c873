using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine.States;

/// <summary>How full a bin is.</summary>
internal sealed class BinState(LineBin bin)
{
    /// <summary>Sums of weights are not exact.</summary>
    private const double Slack = 1e-9;

    public LineBin Bin => bin;

    public double Kilograms { get; private set; }

    /// <summary>All that came into it.</summary>
    public double Sum { get; private set; }

    public int Emptied { get; private set; }

    public bool IsBeingEmptied { get; set; }

    /// <summary>Work stands still until it is emptied.</summary>
    public bool IsWaitedFor { get; private set; }

    /// <summary>When it first could take no more; null when it never was full.</summary>
    public long? FullAt { get; private set; }

    public bool CanBeEmptied => bin.Crew >= 0;

    /// <summary>Whether so much more goes in. A bin that waits until after work takes all, and its overflow is told.</summary>
    public bool Takes(double kilograms) => !CanBeEmptied || Kilograms <= Slack || Kilograms + kilograms <= bin.Kilograms + Slack;

    public void Add(double kilograms, long now)
    {
        Kilograms += kilograms;
        Sum += kilograms;
        if (FullAt is null && Kilograms > bin.Kilograms + Slack)
        {
            FullAt = now;
        }
    }

    public void Wait(long now)
    {
        IsWaitedFor = true;
        FullAt ??= now;
    }

    public void Empty()
    {
        Kilograms = 0;
        Emptied++;
        IsBeingEmptied = false;
        IsWaitedFor = false;
    }
}
