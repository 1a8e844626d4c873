using System.Globalization;
using Floorplan.Language.Quantities;

namespace Floorplan.Language.Words;

/// <summary>A size of paper by the names that printers and drawing offices give it.</summary>
/// <param name="Name">As printed in the title block.</param>
/// <param name="Width">As it lies before the reader, in mm: the longer side, unless it is portrait.</param>
/// <param name="Height">In mm.</param>
/// <param name="OtherNames">Further names that a <c>sheet</c> statement may use.</param>
public sealed record Paper(string Name, double Width, double Height, params IReadOnlyList<string> OtherNames)
{
    private const string Portrait = "portrait";
    private const string Landscape = "landscape";
    private const double Inch = InchPound.MillimetresPerInch;

    /// <summary>
    /// ISO 216; the lettered inch sizes of ASME Y14.1; office and architectural sizes (common practice, no source).
    /// </summary>
    public static IReadOnlyList<Paper> All { get; } =
    [
        new("A4", 297, 210),
        new("A3", 420, 297),
        new("A2", 594, 420),
        new("A1", 841, 594),
        new("A0", 1189, 841),
        Inches(8.5, 11, "letter", "ANSI A"),
        Inches(8.5, 14, "legal"),
        Inches(11, 17, "tabloid", "ledger", "ANSI B"),
        Inches(17, 22, "ANSI C"),
        Inches(22, 34, "ANSI D"),
        Inches(34, 44, "ANSI E"),
        Inches(9, 12, "Arch A"),
        Inches(12, 18, "Arch B"),
        Inches(18, 24, "Arch C"),
        Inches(24, 36, "Arch D"),
        Inches(36, 48, "Arch E"),
    ];

    /// <summary>All names, for the sentence about one that is unknown.</summary>
    public static IEnumerable<string> Names => All.SelectMany(p => p.OtherNames.Prepend(p.Name));

    /// <summary>
    /// Null when no paper is called so. Blanks, capitals and the word <c>in</c> do not count. A paper lies landscape; <c>portrait</c>
    /// after its name turns it.
    /// </summary>
    public static Paper? Find(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string last = words.Length > 1 ? words[^1] : "";
        bool turned = last.Equals(Portrait, StringComparison.OrdinalIgnoreCase);
        string size = turned || last.Equals(Landscape, StringComparison.OrdinalIgnoreCase) ? string.Join(' ', words[..^1]) : name;
        var paper = All.FirstOrDefault(p => p.OtherNames.Prepend(p.Name).Any(n => Plain(n) == Plain(size)));
        return turned ? paper is null ? null : new Paper($"{paper.Name} {Portrait}", paper.Height, paper.Width) : paper;
    }

    private static Paper Inches(double height, double width, params IReadOnlyList<string> otherNames) => new(
        string.Create(CultureInfo.InvariantCulture, $"{height} x {width} in"), width * Inch, height * Inch, otherNames);

    private static string Plain(string name) => name.Replace(" ", "", StringComparison.Ordinal)
        .Replace("in", "", StringComparison.OrdinalIgnoreCase).Replace("\"", "", StringComparison.Ordinal).ToUpperInvariant();
}
