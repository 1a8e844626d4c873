using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Svg;

namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>Pieces of the index page, cleaned and escaped: plans, their names and the list of a folder may come from a stranger.</summary>
internal static class PageText
{
    /// <summary>Names are long only when somebody means harm.</summary>
    private const int Longest = 600;

    public static string Text(string text) => XmlText.Escape(SafeText.Clean(text, Longest));

    /// <summary>As a link: no scheme and no folder can be in it.</summary>
    public static string Address(string file) => Uri.EscapeDataString(file);

    /// <summary>On paper the name of the file is printed after it.</summary>
    public static string Link(string file, string words)
        => $"<a href=\"{Address(file)}\" data-file=\"{Text(file)}\">{Text(words)}</a>";

    public static string Heading(int level, string words) => FormattableString.Invariant($"<h{level}>{Text(words)}</h{level}>\n");

    public static string Capital(string words) => words.Length > 0 ? char.ToUpperInvariant(words[0]) + words[1..] : "";
}
