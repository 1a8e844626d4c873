using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Mending;

/// <summary>One change of a plan's text that mends one finding and makes no other worse; proven by checking the changed text.</summary>
/// <param name="Line">Of the changed or the new line, from 1.</param>
/// <param name="Before">The line as it stands; empty when a line is added.</param>
/// <param name="After">The line as proposed.</param>
/// <param name="Text">The whole text with the change made.</param>
public sealed record Proposal(Finding Finding, int Line, string Before, string After, string Text);
