namespace Floorplan.Checks.Findings;

/// <summary>Other words in place of some of a statement: <c>kill 3</c> for <c>kill 2</c>.</summary>
/// <param name="Old">With one space between words; the text may have more, or none before a unit.</param>
public sealed record WordSwap(string Old, string New);
