using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <summary>
/// Reads one line from left to right. After a mistake the rest of the phrase (up to the next comma) is passed over
/// without more complaints, so that one slip is told once.
/// </summary>
internal sealed partial class Cursor(SourceText source, Token[] tokens, Mistakes mistakes, UnitSystem bareUnits)
{
    private int at;

    public UnitSystem BareUnits => bareUnits;

    /// <summary>A mistake was found in this phrase.</summary>
    public bool Failed { get; private set; }

    /// <summary>Nothing more is told, so that there is no point in reading on.</summary>
    public bool IsFull => mistakes.Full;

    /// <summary>Whether another detail of the statement starts here, so that the list of one detail has ended.</summary>
    public Func<Cursor, bool>? EndsList { get; set; }

    public bool AtEnd => at >= tokens.Length;

    public bool AtPhraseEnd => AtEnd || tokens[at].Kind == TokenKind.Comma;

    public TokenKind? Kind => AtEnd ? null : tokens[at].Kind;

    /// <summary>The current token's text, or an empty string at the end.</summary>
    public string Current => TextAt(0);

    /// <summary>Where the current token is; after the last token at the end of the line.</summary>
    public SourceSpan Here => AtEnd ? new SourceSpan(source, tokens[^1].End, 0) : SpanOf(tokens[at]);

    /// <summary>The span of the token before the current one.</summary>
    public SourceSpan Before => SpanOf(tokens[Math.Max(0, at - 1)]);

    public string TextAt(int ahead)
        => at + ahead >= tokens.Length ? "" : source.Content.Substring(tokens[at + ahead].Start, tokens[at + ahead].Length);

    private ReadOnlySpan<char> SpanAt(int ahead) => source.Content.AsSpan(tokens[at + ahead].Start, tokens[at + ahead].Length);

    public TokenKind? KindAt(int ahead) => at + ahead >= tokens.Length ? null : tokens[at + ahead].Kind;

    public void Skip() => at = Math.Min(at + 1, tokens.Length);

    /// <summary>Goes on after a mistake in the same phrase.</summary>
    public bool Forgive()
    {
        Failed = false;
        return true;
    }

    /// <summary>Moves past the next comma; false at the end of the line. A mistake ends with its phrase.</summary>
    public bool NextPhrase()
    {
        while (!AtPhraseEnd)
        {
            at++;
        }

        Failed = false;
        if (AtEnd)
        {
            return false;
        }

        at++;
        return true;
    }

    /// <summary>Inside a list of one detail: moves past a comma when no other detail starts there and the list goes on.</summary>
    public bool NextInList(Func<Cursor, bool> goesOn) => NextPart(c => c.EndsList?.Invoke(c) != true && goesOn(c));

    /// <summary>
    /// Inside one detail: moves past a comma when this surely belongs to it, even where it is a word of another detail.
    /// </summary>
    public bool NextPart(Func<Cursor, bool> goesOn)
    {
        if (AtEnd || tokens[at].Kind != TokenKind.Comma)
        {
            return false;
        }

        at++;
        if (!AtPhraseEnd && goesOn(this))
        {
            Failed = false;
            return true;
        }

        at--;
        return false;
    }

    public bool IsWord(string word, int ahead = 0)
        => KindAt(ahead) == TokenKind.Word && SpanAt(ahead).Equals(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Takes these words if they stand here, all or none.</summary>
    public bool Try(params ReadOnlySpan<string> words)
    {
        for (int i = 0; i < words.Length; i++)
        {
            if (!IsWord(words[i], i))
            {
                return false;
            }
        }

        at += words.Length;
        return true;
    }

    public bool Expect(string word)
    {
        if (Try(word))
        {
            return true;
        }

        Wrong($"`{word}`");
        return false;
    }

    /// <summary>Whether a word stands anywhere before the next comma.</summary>
    public bool PhraseHolds(string word)
    {
        for (int ahead = 0; KindAt(ahead) is { } kind && kind != TokenKind.Comma; ahead++)
        {
            if (IsWord(word, ahead))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A word taken as it stands, such as a class or a carriage.</summary>
    public WordSyntax? Word(string what, params IReadOnlyList<string> choices)
    {
        if (Kind != TokenKind.Word)
        {
            Wrong(choices.Count is > 0 and < 9 ? what + ": " + NearNames.Quoted(choices) : what);
            return null;
        }

        var word = new WordSyntax(Current.ToLowerInvariant(), Here);
        if (choices.Count > 0 && !choices.Contains(word.Text))
        {
            Error("unknown-word", $"{Found()} is not {what}", Here, NearNames.Hint(word.Text, choices)
                ?? $"use {NearNames.Quoted(choices)}");
            return null;
        }

        at++;
        return word;
    }

    public NameSyntax? Name(string what)
    {
        if (Kind is TokenKind.Number && KindAt(1) is TokenKind.Word && tokens[at].End == tokens[at + 1].Start)
        {
            string name = Shown(Current + TextAt(1));
            Error(
                "bad-name", $"a name starts with a letter, and `{name}` starts with a number", Here.To(SpanOf(tokens[at + 1])),
                $"write `n{name}`, for example");
            return null;
        }

        if (Kind != TokenKind.Word)
        {
            Wrong(what);
            return null;
        }

        if (Current.Length > Bounds.LongestName)
        {
            Error(
                "name-too-long", $"a name has at most {Bounds.LongestName} letters, and this one has {Current.Length}", Here,
                "use a short name and a label in quotes");
            return null;
        }

        var taken = new NameSyntax(Current, Here);
        at++;
        return taken;
    }

    /// <summary>A quoted text if one stands here.</summary>
    public TextSyntax? TryText()
    {
        if (Kind is not (TokenKind.Text or TokenKind.OpenText))
        {
            return null;
        }

        var span = Here;
        string text = Current;
        bool open = Kind == TokenKind.OpenText;
        at++;
        text = open ? text[1..] : text[1..^1];
        if (open)
        {
            Error("text-not-closed", "this text has no closing quote on its line", span, "put a \" at its end");
        }
        else if (text.Length > Bounds.LongestText)
        {
            Error(
                "text-too-long", $"a text has at most {Bounds.LongestText} characters, and this one has {text.Length}", span,
                "shorten it, or use a `note` of its own");
        }
        else
        {
            RefuseHidden(text, span);
        }

        return new TextSyntax(text, span);
    }

    public TextSyntax? Text(string what)
    {
        var text = TryText();
        if (text is null)
        {
            Wrong($"{what} in quotes");
        }

        return text;
    }

    /// <summary>A quoted text, or the plain words up to the next comma.</summary>
    public TextSyntax? Words(string what)
    {
        if (TryText() is { } text)
        {
            return text;
        }

        if (AtPhraseEnd)
        {
            Wrong(what);
            return null;
        }

        var span = Here;
        while (!AtPhraseEnd && Kind is not (TokenKind.Text or TokenKind.OpenText))
        {
            at++;
        }

        span = span.To(Before);
        if (span.Length > Bounds.LongestText)
        {
            Error(
                "text-too-long", $"a text has at most {Bounds.LongestText} characters, and this one has {span.Length}", span, "shorten it");
        }
        else
        {
            // Between plain words a tab is only a space.
            RefuseHidden(span.Value.Replace('\t', ' '), span);
        }

        return new TextSyntax(span.Value, span);
    }

    /// <summary>Says what was expected and what stands here.</summary>
    public void Wrong(string expected, string? help = null) => Error("not-expected", $"expected {expected}, found {Found()}", Here, help);

    public void Error(string code, string message, SourceSpan span, string? help = null, RelatedSpan? related = null)
    {
        if (!Failed)
        {
            mistakes.Add(code, message, span, help, related);
        }

        Failed = true;
    }

    /// <summary>A stretch of the file, cut short for a sentence.</summary>
    public static string Shown(string text)
    {
        const int mostShown = 40;
        return text.Length > mostShown ? text[..mostShown] + "…" : text;
    }

    private void RefuseHidden(string text, SourceSpan span)
    {
        if (HiddenCharacters.FirstOf(text) is { } hidden)
        {
            Error("hidden-character", $"this text holds a character that does not show ({hidden})", span, "type the text again without it");
        }
    }

    /// <summary>What stands here, for a sentence.</summary>
    public string Found()
    {
        if (AtEnd)
        {
            return "the end of the line";
        }

        return tokens[at].Kind switch
        {
            TokenKind.Comma => "a comma",
            TokenKind.Text or TokenKind.OpenText => "a text in quotes",
            _ => "`" + Shown(Current) + "`",
        };
    }

    private SourceSpan SpanOf(Token token) => new(source, token.Start, token.Length);
}
