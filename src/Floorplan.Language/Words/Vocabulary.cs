using Floorplan.Language.Parsing;

namespace Floorplan.Language.Words;

/// <summary>All words of the language, taken from the parsers themselves, for completion, near names and the guide.</summary>
public static class Vocabulary
{
    /// <summary>In the order that a plan is usually written.</summary>
    public static IReadOnlyList<StatementWord> Statements { get; } =
        [.. StatementParsers.All.Select(e => new StatementWord(e.Word, e.Says, e.Use, [.. e.Parser.DetailWords.Order(StringComparer.Ordinal).Select(w => Detail(e, w))]))];

    /// <summary>A statement by its first word; null when there is none.</summary>
    public static StatementWord? Find(string word) => Statements.FirstOrDefault(s => s.Word == word);

    private static DetailWord Detail(StatementParsers.Entry entry, string word) => new(
        word,
        entry.Use == Use.NotYet || entry.Parser.NotYetUsed.Contains(word) ? Use.NotYet : entry.Parser.PartlyUsed.Contains(word) ? Use.Partly : Use.Used);
}

/// <param name="Says">What it says, in a few words.</param>
/// <param name="Details">Words that its details start with, in the order of the alphabet.</param>
public sealed record StatementWord(string Word, string Says, Use Use, IReadOnlyList<DetailWord> Details);

/// <summary>The first word of a detail.</summary>
public sealed record DetailWord(string Word, Use Use);
