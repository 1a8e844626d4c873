using Floorplan.Checks.Findings;

namespace Floorplan.Checks.Mending;

/// <summary>What <see cref="Mender.Propose"/> found.</summary>
/// <param name="Findings">In their order, each with the change that mends it alone where one was found.</param>
/// <param name="Tried">Changes that were tried.</param>
/// <param name="IsAll">False when the work allowed was used up before all were tried.</param>
public sealed record Proposals(IReadOnlyList<Finding> Findings, int Tried, bool IsAll);
