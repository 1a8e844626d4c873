using Floorplan.Language.Text;

namespace Floorplan.Language.Tokens;

/// <summary>Cuts a text into tokens, in one pass, whatever the text is.</summary>
internal sealed class Tokenizer(SourceText source)
{
    private const int DateLength = 10;

    private readonly string text = source.Content;
    private readonly List<Token> tokens = [];
    private int at;

    public static List<Token> Cut(SourceText source)
    {
        var tokenizer = new Tokenizer(source);
        while (tokenizer.at < tokenizer.text.Length)
        {
            tokenizer.Next();
        }

        return tokenizer.tokens;
    }

    private void Next()
    {
        char c = text[at];
        switch (c)
        {
            case '\n' or '\r' when LineEnds.IsLast(text, at):
                Add(TokenKind.NewLine, 1);
                break;
            case '\r':
                Add(TokenKind.NewLine, 2);
                break;
            case ' ' or '\t' or '\u00A0' or '\uFEFF':
                AddWhile(TokenKind.Space, ch => ch is ' ' or '\t' or '\u00A0' or '\uFEFF');
                break;
            case '#':
                AddWhile(TokenKind.Comment, ch => ch is not ('\n' or '\r'));
                break;
            case ',':
                Add(TokenKind.Comma, 1);
                break;
            case ':':
                Add(TokenKind.Colon, 1);
                break;
            case '/':
                Add(TokenKind.Slash, 1);
                break;
            case '%':
                Add(TokenKind.Percent, 1);
                break;
            case '-' when at + 1 < text.Length && text[at + 1] == '>':
                Add(TokenKind.Arrow, 2);
                break;
            case '\u2192':
                Add(TokenKind.Arrow, 1);
                break;
            case '-' or '\u2013' or '\u2212':
                Add(TokenKind.Dash, 1);
                break;
            case '\u00D7':
                Add(TokenKind.Word, 1);
                break;
            // Two foot marks in a row are how some keyboards write the inch mark.
            case '\'' or '\u2018' or '\u2019' or '\u2032':
                bool twice = at + 1 < text.Length && IsFootMark(text[at + 1]);
                Add(twice ? TokenKind.InchMark : TokenKind.FootMark, twice ? 2 : 1);
                break;
            case '"' or '\u201C' or '\u201D' or '\u2033':
                Quote();
                break;
            default:
                Other(c);
                break;
        }
    }

    private void Other(char c)
    {
        if (IsDigit(c) || (c == '.' && at + 1 < text.Length && IsDigit(text[at + 1])))
        {
            Number();
        }
        else if (VulgarFractions.Value(c) is not null)
        {
            Add(TokenKind.Fraction, 1);
        }
        else if (char.IsLetter(c) || c == '_')
        {
            Word();
        }
        else
        {
            // Both halves of a surrogate pair stay in one token, so that no message cuts one in two.
            Add(TokenKind.Unknown, char.IsHighSurrogate(c) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1]) ? 2 : 1);
        }
    }

    /// <summary>Right after a digit or fraction it means inches; anywhere else it opens a text.</summary>
    private void Quote()
    {
        char before = at == 0 ? ' ' : text[at - 1];
        if (text[at] == '\u2033' || IsDigit(before) || VulgarFractions.Value(before) is not null)
        {
            Add(TokenKind.InchMark, 1);
            return;
        }

        int end = at + 1;
        while (end < text.Length && text[end] is not ('"' or '\u201D' or '\u201C' or '\n' or '\r'))
        {
            end++;
        }

        bool closed = end < text.Length && text[end] is '"' or '\u201D' or '\u201C';
        Add(closed ? TokenKind.Text : TokenKind.OpenText, closed ? end + 1 - at : end - at);
    }

    private void Number()
    {
        if (IsDate())
        {
            Add(TokenKind.Date, DateLength);
            return;
        }

        int end = at;
        while (end < text.Length && IsDigit(text[end]))
        {
            end++;
        }

        if (end + 1 < text.Length && text[end] == '.' && IsDigit(text[end + 1]))
        {
            end++;
            while (end < text.Length && IsDigit(text[end]))
            {
                end++;
            }
        }

        Add(TokenKind.Number, end - at);
    }

    private bool IsDate()
    {
        if (at + DateLength > text.Length || (at + DateLength < text.Length && IsDigit(text[at + DateLength])))
        {
            return false;
        }

        for (int i = 0; i < DateLength; i++)
        {
            bool dash = i is 4 or 7;
            if (dash ? text[at + i] != '-' : !IsDigit(text[at + i]))
            {
                return false;
            }
        }

        return true;
    }

    private void Word()
    {
        int end = at + 1;
        while (end < text.Length)
        {
            char c = text[end];
            bool inside = c is '-' or '.' or '/' && end + 1 < text.Length && (char.IsLetterOrDigit(text[end + 1]) || text[end + 1] == '_');
            if (!char.IsLetterOrDigit(c) && c is not ('_' or '\u00B2' or '\u00B3') && !inside)
            {
                break;
            }

            end++;
        }

        Add(TokenKind.Word, end - at);
    }

    private static bool IsFootMark(char c) => c is '\'' or '\u2018' or '\u2019' or '\u2032';

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private void AddWhile(TokenKind kind, Func<char, bool> goesOn)
    {
        int end = at + 1;
        while (end < text.Length && goesOn(text[end]))
        {
            end++;
        }

        Add(kind, end - at);
    }

    private void Add(TokenKind kind, int length)
    {
        tokens.Add(new Token(kind, at, length));
        at += length;
    }
}
