using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <summary>Reads one kind of statement.</summary>
internal interface IStatementParser
{
    /// <summary>Detail words of this statement.</summary>
    IReadOnlyCollection<string> DetailWords { get; }

    /// <summary>Detail words that are read and kept, but that no place, check or sheet uses yet.</summary>
    IReadOnlySet<string> NotYetUsed { get; }

    /// <summary>Detail words of which some forms are used and others not yet.</summary>
    IReadOnlySet<string> PartlyUsed { get; }

    Statement Parse(WordSyntax keyword, Cursor head, IReadOnlyList<Cursor> details);
}

/// <summary>The shape that all statements share: a head, then details behind commas or on deeper lines.</summary>
internal abstract class StatementParser<T> : IStatementParser
    where T : Statement
{
    private static readonly string[] JoiningWords = ["from", "below", "each", "wide", "apart"];

    private string[]? words;

    public virtual IReadOnlyCollection<string> DetailWords => words ??= [.. Handlers.Keys];

    public virtual IReadOnlySet<string> NotYetUsed => NoWords;

    public virtual IReadOnlySet<string> PartlyUsed => NoWords;

    /// <summary>What each detail word reads; the word itself is already taken.</summary>
    protected abstract IReadOnlyDictionary<string, Action<T, Cursor>> Handlers { get; }

    /// <summary>Details that may be said more than once.</summary>
    protected virtual IReadOnlySet<string> Repeatable => NoWords;

    private static HashSet<string> NoWords { get; } = [];

    public Statement Parse(WordSyntax keyword, Cursor head, IReadOnlyList<Cursor> details)
    {
        var statement = Make(keyword);
        var said = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        var found = new List<DetailSyntax>();
        Head(statement, head);
        if (CommaLeftOut(head))
        {
            Phrase(statement, head, said, found);
        }

        while (head.NextPhrase() && !head.IsFull)
        {
            Phrase(statement, head, said, found);
        }

        statement.HeadSpan = keyword.Span.To(head.Before);
        statement.Span = statement.HeadSpan;
        foreach (var line in details)
        {
            DetailLine(statement, line, said, found);
            statement.Span = keyword.Span.To(line.Before);
            if (line.IsFull)
            {
                break;
            }
        }

        statement.Details = found;
        return statement;
    }

    protected abstract T Make(WordSyntax keyword);

    /// <summary>Reads what stands between the keyword and the first comma.</summary>
    protected abstract void Head(T statement, Cursor c);

    /// <summary>Reads a phrase that starts with no detail word; false when it is none of this statement's.</summary>
    protected virtual bool Headless(T statement, Cursor c) => false;

    protected virtual void DetailLine(T statement, Cursor line, Dictionary<string, SourceSpan> said, List<DetailSyntax> found)
    {
        do
        {
            Phrase(statement, line, said, found);
        }
        while (line.NextPhrase() && !line.IsFull);
    }

    /// <summary>Reads up to the next comma, and over commas that were left out between details.</summary>
    private void Phrase(T statement, Cursor c, Dictionary<string, SourceSpan> said, List<DetailSyntax> found)
    {
        do
        {
            Detail(statement, c, said, found);
        }
        while (CommaLeftOut(c));
    }

    private void Detail(T statement, Cursor c, Dictionary<string, SourceSpan> said, List<DetailSyntax> found)
    {
        var start = c.Here;
        if (c.AtPhraseEnd)
        {
            c.Wrong("a detail", "take out the comma that has nothing behind it");
            return;
        }

        string word = c.Current.ToLowerInvariant();
        if (Handlers.TryGetValue(word, out var handler))
        {
            if (!Repeatable.Contains(word) && !said.TryAdd(word, start))
            {
                c.Error("said-twice", $"`{word}` is said twice in this `{statement.Keyword.Text}`", start, "keep one of them", new RelatedSpan(said[word], "first said here"));
            }

            c.Skip();
            handler(statement, c);
            found.Add(new DetailSyntax(word, start.To(c.Before)));
        }
        else if (Headless(statement, c))
        {
            found.Add(new DetailSyntax("", start.To(c.Before)));
        }
        else if (!c.Failed)
        {
            var near = NearNames.Find(word, DetailWords);
            c.Error("unknown-detail", $"{c.Found()} is not a detail of `{statement.Keyword.Text}`", start, near.Count > 0 ? NearNames.Hint(word, near) : Known());
            if (near.Count > 0 && Handlers.TryGetValue(near[0], out var meant))
            {
                // Read on as what was probably meant, so that its own commas are not taken for more mistakes.
                c.Skip();
                meant(statement, c);
            }
        }
    }

    /// <summary>Tells of words left over in a phrase; true when they are a detail that can be read all the same.</summary>
    private bool CommaLeftOut(Cursor c)
    {
        if (c.AtPhraseEnd || c.Failed)
        {
            return false;
        }

        string? slip = c.Kind == TokenKind.Word ? NearNames.Hint(c.Current, JoiningWords) : null;
        c.Error("left-over", $"expected a comma or the end of the line, found {c.Found()}", c.Here, slip ?? "details on one line are separated by commas");
        return Handlers.ContainsKey(c.Current.ToLowerInvariant()) && !c.IsFull && c.Forgive();
    }

    private string? Known() => DetailWords.Count == 0 ? null : $"its details are {NearNames.Quoted([.. DetailWords.Order(StringComparer.Ordinal)])}";
}
