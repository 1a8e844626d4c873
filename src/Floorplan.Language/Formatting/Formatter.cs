using System.Text;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Formatting;

/// <summary>
/// Sets a file in one way: details indented by two spaces with their words in a column, two blank lines at most, no
/// spaces at line ends, LF. Columns that the writer made on head lines and in flows stay. Words, comments and meaning stay
/// as they are. A file with so many mistakes that it was not read to its end comes back unchanged.
/// </summary>
public static class Formatter
{
    private const int DetailIndent = 2;

    private const int MostBlankLines = 2;

    /// <summary>The column of words is at least this wide, so that usual statements line up with each other.</summary>
    private const int LeastColumn = 9;

    private const int LeastHeadColumn = 10;

    /// <summary>Statements at the head of a plan, whose words are a little longer.</summary>
    private static readonly HashSet<string> HeadStatements = ["plan", "shell", "room", "partitions"];

    private static readonly HashSet<string> TwoWords = ["drawn by", "checked by", "true north"];

    public static string Format(SyntaxTree tree)
    {
        if (tree.HeadStarts is not { } heads)
        {
            return tree.ToText();
        }

        var lines = Lines(tree, [.. heads]).ToList();
        var result = new StringBuilder();
        int blank = 0;
        int column = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            if (line.Tokens.Count == 0)
            {
                blank++;
                continue;
            }

            result.Append('\n', result.Length == 0 ? 0 : Math.Min(blank, MostBlankLines));
            blank = 0;
            column = line.IsHead ? Column(tree.Source, lines, i) : column;
            Write(result, tree.Source, line, column);
        }

        return result.ToString();
    }

    /// <summary>The lines without line ends and without spaces at their ends.</summary>
    private static IEnumerable<FormatLine> Lines(SyntaxTree tree, HashSet<int> heads)
    {
        var line = new List<Token>();
        bool below = false;
        foreach (var token in tree.Tokens.Append(new Token(TokenKind.NewLine, 0, 0)))
        {
            if (token.Kind != TokenKind.NewLine)
            {
                line.Add(token);
                continue;
            }

            int first = line.FindIndex(t => t.Kind != TokenKind.Space);
            int last = line.FindLastIndex(t => t.Kind != TokenKind.Space);
            bool isHead = first >= 0 && heads.Contains(line[first].Start);
            below |= isHead;

            // A comment belongs to the statement above when it is indented, and to the one below when it is not.
            bool isDetail = !isHead && below && first >= 0 && (line[first].Kind != TokenKind.Comment || first > 0);
            yield return new FormatLine(first < 0 ? [] : line[first..(last + 1)], isHead, isDetail);
            line = [];
        }
    }

    /// <summary>Two spaces after the longest detail word of the statement; 0 for a flow, whose chains have no such word.</summary>
    private static int Column(SourceText source, List<FormatLine> lines, int head)
    {
        string statement = Text(source, lines[head].Tokens[0]).ToLowerInvariant();
        if (statement == "flow")
        {
            return 0;
        }

        int longest = 0;
        for (int i = head + 1; i < lines.Count && !lines[i].IsHead; i++)
        {
            longest = Math.Max(longest, DetailWord(source, lines[i]).Word.Length);
        }

        return Math.Max(HeadStatements.Contains(statement) ? LeastHeadColumn : LeastColumn, longest + 2);
    }

    /// <summary>
    /// The word or words that a detail starts with and how many tokens they are; empty when nothing follows or it starts with no word.
    /// </summary>
    private static (string Word, int Tokens) DetailWord(SourceText source, FormatLine line)
    {
        var tokens = line.Tokens;
        if (!line.IsDetail || tokens.Count < 3 || tokens[0].Kind != TokenKind.Word || tokens[1].Kind != TokenKind.Space)
        {
            return ("", 0);
        }

        string first = Text(source, tokens[0]);
        string both = tokens.Count > 4 && tokens[2].Kind == TokenKind.Word && tokens[3].Kind == TokenKind.Space
            ? first + " " + Text(source, tokens[2])
            : "";
        return TwoWords.Contains(both.ToLowerInvariant()) ? (both, 3) : (first, 1);
    }

    private static void Write(StringBuilder result, SourceText source, FormatLine line, int column)
    {
        result.Append(' ', line.IsDetail ? DetailIndent : 0);
        bool align = line.IsDetail && column > 0;
        var (word, wordTokens) = align ? DetailWord(source, line) : ("", 0);
        result.Append(word);
        var tokens = line.Tokens;
        for (int i = wordTokens; i < tokens.Count; i++)
        {
            var text = source.Content.AsSpan(tokens[i].Start, tokens[i].Length);
            if (tokens[i].Kind != TokenKind.Space)
            {
                result.Append(tokens[i].Kind is TokenKind.Comment or TokenKind.OpenText ? text.TrimEnd() : text);
            }
            else if (i + 1 < tokens.Count && tokens[i + 1].Kind == TokenKind.Comment)
            {
                result.Append(' ', Math.Max(2, text.Length));
            }
            else if (align)
            {
                result.Append(' ', i == wordTokens && i > 0 ? column - word.Length : 1);
            }
            else
            {
                result.Append(' ', text.Length);
            }
        }

        result.Append('\n');
    }

    private static string Text(SourceText source, Token token) => source.Content.Substring(token.Start, token.Length);

    private sealed record FormatLine(List<Token> Tokens, bool IsHead, bool IsDetail);
}
