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

    /// <summary>The column of words is at least this wide, so that usual statements line up with each other.</summary>
    private const int LeastColumn = 9;

    private const int MostBlankLines = 2;

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

    /// <summary>Two spaces behind the longest detail word of the statement; 0 for a flow, whose chains have no such word.</summary>
    private static int Column(SourceText source, List<FormatLine> lines, int head)
    {
        var first = lines[head].Tokens[0];
        if (source.Content.AsSpan(first.Start, first.Length).Equals("flow", StringComparison.OrdinalIgnoreCase))
        {
            return 0;
        }

        int longest = 0;
        for (int i = head + 1; i < lines.Count && !lines[i].IsHead; i++)
        {
            longest = lines[i].HasWord ? Math.Max(longest, lines[i].Tokens[0].Length) : longest;
        }

        return Math.Max(LeastColumn, longest + 2);
    }

    private static void Write(StringBuilder result, SourceText source, FormatLine line, int column)
    {
        result.Append(' ', line.IsDetail ? DetailIndent : 0);
        bool align = line.IsDetail && column > 0;
        var tokens = line.Tokens;
        for (int i = 0; i < tokens.Count; i++)
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
                result.Append(' ', i == 1 && line.HasWord ? Math.Max(1, column - tokens[0].Length) : 1);
            }
            else
            {
                result.Append(' ', text.Length);
            }
        }

        result.Append('\n');
    }

    private sealed record FormatLine(List<Token> Tokens, bool IsHead, bool IsDetail)
    {
        /// <summary>A detail that starts with a word and goes on.</summary>
        public bool HasWord => IsDetail && Tokens.Count > 2 && Tokens[0].Kind == TokenKind.Word && Tokens[1].Kind == TokenKind.Space;
    }
}
