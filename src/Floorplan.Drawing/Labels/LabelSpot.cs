using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>A place that was found for a label.</summary>
/// <param name="From">Where a leader leaves the label; null where it stands at its target.</param>
/// <param name="To">Where the leader ends.</param>
internal sealed record LabelSpot(LabelShape Shape, PaperBox Box, PaperPoint? From, PaperPoint To)
{
    /// <summary>0 is clear and at the target; else in mm of leader that it is as bad as.</summary>
    public double Cost { get; init; }
}
