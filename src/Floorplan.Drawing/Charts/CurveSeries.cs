namespace Floorplan.Drawing.Charts;

/// <summary>One line of a chart.</summary>
/// <param name="Name">For the key; empty where there is but one.</param>
/// <param name="Points">From left to right.</param>
/// <param name="IsStep">A value holds until the next, so the line goes in steps.</param>
internal sealed record CurveSeries(string Name, IReadOnlyList<(double X, double Y)> Points, bool IsStep = true)
{
    /// <summary>A point with a ring round it: what the plan says now.</summary>
    public (double X, double Y)? Now { get; init; }
}

/// <summary>What a chart of curves shows besides its lines.</summary>
/// <param name="Head">Over the chart: the unit, and what the dashed line is.</param>
/// <param name="Foot">Under the chart: what the axis is.</param>
/// <param name="IsTime">The axis is of time, in ticks; else of whole numbers.</param>
internal sealed record CurveFrame(string Title, string Head, string Foot, bool IsTime, double From, double To)
{
    /// <summary>Dashed: what is held, what is asked for; from left to right. Empty for none.</summary>
    public IReadOnlyList<(double X, double Y)> Limit { get; init; } = [];

    /// <summary>Where the limit is reached first.</summary>
    public (double X, double Y)? Mark { get; init; }
}
