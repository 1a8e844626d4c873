using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>What became of a label.</summary>
/// <param name="Box">The paper that it takes; null when it found no place.</param>
/// <param name="KeyNumber">The number drawn in its stead (<c>k1</c>, <c>k2</c> …) whose text must go to the key table; null when drawn
/// in full.</param>
public sealed record LabelResult(LabelRequest Request, LabelOutcome Outcome, PaperBox? Box, string? KeyNumber);

public enum LabelOutcome
{
    AtTarget,
    WithLeader,

    /// <summary>A key number stands for it.</summary>
    Keyed,

    /// <summary>Not even a number fits: say it in the key table without a mark.</summary>
    Unplaced,
}
