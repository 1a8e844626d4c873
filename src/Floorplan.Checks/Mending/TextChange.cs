namespace Floorplan.Checks.Mending;

/// <summary>A stretch of a text replaced by other words.</summary>
/// <param name="Start">In UTF-16 units of the text before.</param>
/// <param name="Size">How much the change alters, in mm; smaller ones are tried first.</param>
public sealed record TextChange(int Start, int Length, string Words, double Size)
{
    public string Apply(string text) => string.Concat(text.AsSpan(0, Start), Words, text.AsSpan(Start + Length));
}
