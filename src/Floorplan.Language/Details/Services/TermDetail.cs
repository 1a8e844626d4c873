using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>Details that are said by one word of the trade, such as <c>cold</c> or <c>single-phase</c>.</summary>
internal static class TermDetail
{
    /// <summary>Said or not.</summary>
    public static Detail<WordSyntax> Flag(string word, string says)
        => new(word, says, [word], c => new WordSyntax(word, c.Before)) { RunsOn = true };

    /// <summary>One of several words.</summary>
    public static Detail<TermSyntax<T>> OneOf<T>(string says)
        where T : struct, Enum
    {
        var byWord = Enum.GetValues<T>().ToDictionary(TermWord.Of, StringComparer.OrdinalIgnoreCase);
        string[] words = [.. byWord.Keys];

        // A word that was only probably meant is none of them.
        return new(words[0], says, words, c => byWord.TryGetValue(c.Before.Value, out var term)
            ? new TermSyntax<T>(term, c.Before)
            : null)
        { Forms = words, RunsOn = true };
    }
}
