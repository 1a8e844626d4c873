using Floorplan.Language.Details;
using Floorplan.Language.Parsing;

namespace Floorplan.Language.Words;

/// <summary>All words of the language, taken from the parsers themselves, for completion, near names and the guide.</summary>
public static class Vocabulary
{
    /// <summary>In the order that a plan is usually written.</summary>
    public static IReadOnlyList<StatementWord> Statements { get; } = [.. StatementParsers.All.Select(Statement)];

    /// <summary>A statement by its first word; null when there is none.</summary>
    public static StatementWord? Find(string word) => Statements.FirstOrDefault(s => s.Word == word);

    private static StatementWord Statement(StatementParsers.Entry entry)
    {
        var bare = entry.Parser.Bare.Select(b => b.Detail).ToList();
        var details = entry.Parser.Words(entry.Word).Details.Concat(bare).Where(d => d.IsOf(entry.Word)).Distinct();
        return new StatementWord(
            entry.Word,
            entry.Says,
            entry.Use,
            [.. details.Select(d => new DetailWord(d, entry.Use == Use.NotYet ? Use.NotYet : d.Use, bare.Contains(d)))]);
    }
}

/// <param name="Says">What it says, in a few words.</param>
/// <param name="Details">All that it may say, in the order of the guide.</param>
public sealed record StatementWord(string Word, string Says, Use Use, IReadOnlyList<DetailWord> Details);

/// <summary>A detail as one statement has it.</summary>
/// <param name="MayStandBare">May be written without its word.</param>
public sealed record DetailWord(Detail Detail, Use Use, bool MayStandBare)
{
    public string Word => Detail.Word;
}
