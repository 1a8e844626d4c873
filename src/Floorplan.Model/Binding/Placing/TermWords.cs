using Floorplan.Language.Syntax.Values;

namespace Floorplan.Model.Binding.Placing;

/// <summary>What all place terms share.</summary>
internal static class TermWords
{
    private const int LongestShown = 60;

    /// <summary>The thing that a term refers to, or null.</summary>
    public static NameSyntax? Other(this PlaceTerm term) => term switch
    {
        BesideTerm t => t.Other,
        CentredOnTerm t => t.Other,
        InLineTerm t => t.Other,
        FlushTerm t => t.Other,
        _ => null,
    };

    /// <summary>The term as written, on one line and of bounded length.</summary>
    public static string Words(this PlaceTerm term)
    {
        string text = string.Join(' ', term.Span.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return text.Length <= LongestShown ? text : text[..LongestShown] + "...";
    }
}
