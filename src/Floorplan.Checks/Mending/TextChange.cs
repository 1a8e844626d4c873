namespace Floorplan.Checks.Mending;

/// <summary>A stretch of a text replaced by other words.</summary>
/// <param name="Size">How much the change alters, in mm; smaller ones are tried first.</param>
internal sealed record TextChange(int Start, int Length, string Words, double Size)
{
    public string Apply(string text) => string.Concat(text.AsSpan(0, Start), Words, text.AsSpan(Start + Length));
}
