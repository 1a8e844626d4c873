using Floorplan.Language.Details;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <summary>Reads one kind of statement.</summary>
internal interface IStatementParser
{
    /// <summary>All that a statement with this first word may say.</summary>
    DetailWords Words(string keyword);

    /// <summary>All that the statement may say after one of its words, in the order of the guide.</summary>
    IReadOnlyList<Detail> Details { get; }

    /// <summary>Details that may stand without a word.</summary>
    IReadOnlyList<BareForm> Bare { get; }

    Statement Parse(WordSyntax keyword, Cursor head, IReadOnlyList<Cursor> details);
}

/// <summary>The shape that all statements share: a head, then details between commas or on deeper lines.</summary>
internal abstract class StatementParser<T> : IStatementParser
    where T : Statement
{
    private static readonly string[] JoiningWords = ["from", "below", "each", "wide", "apart"];

    private readonly Dictionary<string, DetailWords> byKeyword = new(StringComparer.Ordinal);
    private readonly DetailWords all;

    protected StatementParser() => all = new DetailWords(Details);

    /// <summary>For parsers that get their details from outside.</summary>
    protected StatementParser(IReadOnlyList<Detail> details) => all = new DetailWords(details);

    /// <inheritdoc/>
    public abstract IReadOnlyList<Detail> Details { get; }

    /// <summary>Details that may stand without their word.</summary>
    public virtual IReadOnlyList<BareForm> Bare => [];

    public DetailWords Words(string keyword)
    {
        lock (byKeyword)
        {
            if (!byKeyword.TryGetValue(keyword, out var words))
            {
                byKeyword[keyword] = words = new DetailWords([.. Details.Where(d => d.IsOf(keyword))]);
            }

            return words;
        }
    }

    public Statement Parse(WordSyntax keyword, Cursor head, IReadOnlyList<Cursor> details)
    {
        var statement = Make(keyword);
        var words = Words(keyword.Text);
        head.EndsList = c => StartsDetail(c, words);
        Head(statement, head);
        bool headRead = !head.Failed;
        if (CommaLeftOut(head, words))
        {
            Phrase(statement, head, words);
        }

        while (head.NextPhrase() && !head.IsFull)
        {
            Phrase(statement, head, words);
        }

        statement.HeadSpan = keyword.Span.To(head.Before);
        statement.Span = statement.HeadSpan;
        foreach (var line in details)
        {
            line.EndsList = head.EndsList;
            DetailLine(statement, line, words);
            statement.Span = keyword.Span.To(line.Before);
            if (line.IsFull)
            {
                break;
            }
        }

        if (headRead)
        {
            TellMissing(statement, words, head);
        }

        return statement;
    }

    protected abstract T Make(WordSyntax keyword);

    /// <summary>Reads what stands between the keyword and the first comma.</summary>
    protected abstract void Head(T statement, Cursor c);

    /// <summary>The word that says which details fit beside the keyword, such as the kind of a shell; null when there is none.</summary>
    protected virtual string? Variant(T statement) => null;

    protected virtual void DetailLine(T statement, Cursor line, DetailWords words)
    {
        do
        {
            Phrase(statement, line, words);
        }
        while (line.NextPhrase() && !line.IsFull);
    }

    /// <summary>In a head: reads this detail if its words stand here, without a comma before it.</summary>
    protected static bool TryInHead(T statement, Cursor c, Detail detail)
    {
        var start = c.Here;
        if (!c.Try(detail.Word.Split(' ')))
        {
            return false;
        }

        Keep(statement, c, detail, detail.Word, start, detail.Read(c));
        return true;
    }

    /// <summary>
    /// Keeps what is said of a detail. One that counts once and is said twice is told, since one of the two would be lost.
    /// </summary>
    /// <param name="word">The first word that it was written with; empty for none.</param>
    protected static void Keep(T statement, Cursor c, Detail detail, string word, SourceSpan start, object? value)
    {
        if (statement.Details.Count > Bounds.MostDetails)
        {
            return;
        }

        if (statement.Details.Count == Bounds.MostDetails)
        {
            c.Error(
                "too-many-details", $"a `{statement.Keyword.Text}` has at most {Bounds.MostDetails} details", start,
                "take out what was written again and again");
        }

        // Of what may be said any number of times nothing is looked for, so that a statement of very many details is read in step with
        // its length.
        bool counts = detail.Group is not null || (detail.Repeatable ? detail.MayClash : !(detail.BareRepeats && word.Length == 0));
        foreach (var said in counts ? statement.Details : [])
        {
            if (said.Declared is { } other && Clash(detail, word, value, other, said))
            {
                c.Error(
                    "said-twice",
                    ReferenceEquals(other, detail) && (word.Length == 0 || said.Keyword.Length == 0 || word == said.Keyword)
                        ? $"`{detail.Word}` is said twice in this `{statement.Keyword.Text}`"
                        : $"`{(ReferenceEquals(other, detail) ? said.Keyword : other.Word)}` and "
                            + $"`{(ReferenceEquals(other, detail) ? word : detail.Word)}` are both said in this `{statement.Keyword.Text}`",
                    start,
                    "keep one of them",
                    new RelatedSpan(
                        said.Keyword.Length > 0 ? said.Span with { Length = said.Keyword.Length } : said.Span,
                        "first said here"));
                break;
            }
        }

        statement.Add(new DetailSyntax(word, start.To(c.Before)) { Declared = detail, Value = value });
    }

    private static bool Clash(Detail detail, string word, object? value, Detail other, DetailSyntax said)
    {
        if (!ReferenceEquals(detail, other))
        {
            return detail.Group is { } group && group == other.Group;
        }

        bool eitherBare = word.Length == 0 || said.Keyword.Length == 0;
        return detail.Repeatable ? detail.Clash(said.Value, value) : !(detail.BareRepeats && eitherBare);
    }

    /// <summary>Reads up to the next comma, and over commas that were left out between details.</summary>
    private void Phrase(T statement, Cursor c, DetailWords words)
    {
        Detail? read;
        do
        {
            read = ReadDetail(statement, c, words);
        }
        while ((read?.RunsOn == true && words.StartAt(c)) || CommaLeftOut(c, words));
    }

    private Detail? ReadDetail(T statement, Cursor c, DetailWords words)
    {
        var start = c.Here;
        if (c.AtPhraseEnd)
        {
            c.Wrong("a detail", "take out the comma that has nothing after it");
            return null;
        }

        string word = c.Current.ToLowerInvariant();
        var bare = BareAt(c, statement.Keyword.Text);
        if (words.FormAt(c, word) is { } form && (bare is null || form.StandsAt(c)))
        {
            ReadForm(statement, c, form, start);
            return form.Detail;
        }

        if (bare is not null)
        {
            Keep(statement, c, bare.Detail, "", start, bare.Read(c));
        }
        else if (!c.Failed)
        {
            Unknown(statement, c, words, word, start);
        }

        return bare?.Detail;
    }

    private void ReadForm(T statement, Cursor c, DetailWords.Form form, SourceSpan start)
    {
        if (Variant(statement) is { } variant && !form.Detail.IsOf(variant))
        {
            c.Error(
                "unknown-detail",
                $"`{form.Detail.Word}` is not a detail of a {variant}",
                start,
                $"take it out: only a {string.Join(" or a ", form.Detail.Of.Where(o => o != statement.Keyword.Text))} has one");
        }

        object? value = form.Take(c) ? form.Detail.Read(c) : null;
        Keep(statement, c, form.Detail, form.Words[0], start, value);
    }

    private void Unknown(T statement, Cursor c, DetailWords words, string word, SourceSpan start)
    {
        if (all.FormAt(c, word) is { } others)
        {
            c.Error(
                "unknown-detail",
                $"`{others.Detail.Word}` is not a detail of `{statement.Keyword.Text}`",
                start,
                $"take it out: only {NearNames.Quoted(others.Detail.Of)} may have one");
            PassOver(c, others);
            return;
        }

        var near = NearNames.Find(word, words.First);
        if (near.Count == 0 && Elsewhere(c, word) is { } elsewhere)
        {
            c.Error(
                "unknown-detail",
                $"`{elsewhere.Form.Detail.Word}` is not a detail of `{statement.Keyword.Text}`",
                start,
                $"take it out: only {NearNames.Quoted(elsewhere.Owners)} may have one");
            PassOver(c, elsewhere.Form);
            return;
        }

        c.Error(
            "unknown-detail",
            $"{c.Found()} is not a detail of `{statement.Keyword.Text}`",
            start,
            near.Count > 0 ? NearNames.Hint(word, near) : Known(words));
        if (near.Count > 0 && words.FormAt(c, near[0]) is { } meant)
        {
            // Read on as what was probably meant, so that its own commas are not taken for more mistakes.
            object? value = meant.Take(c) ? meant.Detail.Read(c) : null;
            Keep(statement, c, meant.Detail, word, start, value);
        }
    }

    /// <summary>Reads a detail that the statement does not have, and all that goes on from it, so that it is told once.</summary>
    private void PassOver(Cursor c, DetailWords.Form form)
    {
        if (!form.Take(c))
        {
            return;
        }

        do
        {
            form.Detail.Read(c);
        }
        while (form.Detail.BareRepeats && c.NextPart(n => Bare.Any(b => ReferenceEquals(b.Detail, form.Detail) && b.Starts(n))));
    }

    /// <summary>The detail that other statements have under this word, when only a few have it.</summary>
    private static (DetailWords.Form Form, string[] Owners)? Elsewhere(Cursor c, string word)
    {
        const int few = 5;
        var entries = StatementParsers.All.Where(e => e.Word != "kind" && e.Parser.Words(e.Word).Has(word)).DistinctBy(e => e.Parser)
            .ToList();
        return entries.Count is 0 or > few
            ? null
            : (entries[0].Parser.Words(entries[0].Word).FormAt(c, word)!, [.. entries.Select(e => e.Word)]);
    }

    private BareForm? BareAt(Cursor c, string keyword)
    {
        BareForm? lenient = null;
        foreach (var bare in Bare)
        {
            if (!bare.Detail.IsOf(keyword))
            {
                continue;
            }

            if (bare.Starts(c))
            {
                return bare;
            }

            lenient ??= bare.MayStart?.Invoke(c) == true ? bare : null;
        }

        return lenient;
    }

    /// <summary>Whether a list that came before has ended, because a detail of this statement starts here.</summary>
    private bool StartsDetail(Cursor c, DetailWords words)
    {
        if (words.StartAt(c))
        {
            return true;
        }

        foreach (var bare in Bare)
        {
            if (bare.Starts(c))
            {
                return true;
            }
        }

        return false;
    }

    private void TellMissing(T statement, DetailWords words, Cursor head)
    {
        var missing = words.Details.Concat(Bare.Select(b => b.Detail))
            .Where(d => d.Needed == Needed.Always
                && d.IsOf(statement.Keyword.Text)
                && !statement.Details.Any(s => ReferenceEquals(s.Declared, d)))
            .Distinct()
            .ToList();
        if (missing.Count > 0)
        {
            string name = statement.Name is { } given ? $"{statement.Keyword.Text} `{given.Text}`" : $"this `{statement.Keyword.Text}`";
            head.Forgive();
            head.Error(
                "detail-missing",
                $"{name} does not say its {string.Join(" and its ", missing.Select(d => $"`{d.Word}`"))}",
                statement.HeadSpan,
                $"add {(missing.Count == 1 ? "a line" : "lines")} such as "
                    + $"{string.Join(" and ", missing.Select(d => $"`{Example(d, head.BareUnits)}`"))}");
        }
    }

    private static string Example(Detail detail, UnitSystem units) => units == UnitSystem.Feet && detail.InFeet is { } feet
        ? feet
        : detail.Examples[0];

    /// <summary>Tells of words left over in a phrase; true when they are a detail that can be read all the same.</summary>
    private static bool CommaLeftOut(Cursor c, DetailWords words)
    {
        if (c.AtPhraseEnd || c.Failed)
        {
            return false;
        }

        string? slip = c.Kind == TokenKind.Word ? NearNames.Hint(c.Current, JoiningWords) : null;
        c.Error(
            "left-over",
            $"expected a comma or the end of the line, found {c.Found()}",
            c.Here,
            slip ?? "details on one line are separated by commas");
        return words.Has(c.Current.ToLowerInvariant()) && !c.IsFull && c.Forgive();
    }

    private static string? Known(DetailWords words) => words.Details.Count == 0
        ? null
        : $"its details are {NearNames.Quoted([.. words.Details.SelectMany(d => d.Forms).Order(StringComparer.Ordinal)])}";
}
