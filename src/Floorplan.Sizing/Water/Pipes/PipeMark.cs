namespace Floorplan.Sizing.Water.Pipes;

/// <summary>A size of pipe as drawings letter it, on one line: <c>3/4"</c>, <c>DN 100</c>.</summary>
internal static class PipeMark
{
    private const string Inches = " in";

    /// <param name="name">As it is bought: <c>3/4 in</c>.</param>
    /// <param name="metric">What stands for it where it is not bought in inches.</param>
    public static string Of(string name, string metric)
        => (name.EndsWith(Inches, StringComparison.Ordinal) ? name[..^Inches.Length] + "\"" : metric).Replace(' ', '\u00A0');
}
