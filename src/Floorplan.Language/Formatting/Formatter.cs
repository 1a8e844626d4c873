using System.Text;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Formatting;

/// <summary>
/// Sets a file in one way: details indented by two spaces with their words in a column, two blank lines at most, no
/// spaces at line ends. Columns that the writer made on head lines stay. Words, comments and meaning stay as they are.
/// </summary>
public static class Formatter
{
    private const int DetailIndent = 2;
    private const int DetailWordWidth = 8;
    private const int MostBlankLines = 2;

    public static string Format(SyntaxTree tree)
    {
        var heads = tree.Statements.Select(s => s.Keyword.Span.Position.Line).ToHashSet();
        var flows = tree.Statements.Where(s => s.Keyword.Text == "flow").Select(s => s.Keyword.Span.Position.Line).ToHashSet();
        var result = new StringBuilder();
        int blank = 0;
        bool inStatement = false;
        bool inFlow = false;
        foreach (var line in Lines(tree))
        {
            if (line.Count == 0)
            {
                blank++;
                continue;
            }

            result.Append('\n', result.Length == 0 ? 0 : Math.Min(blank, MostBlankLines));
            blank = 0;
            int number = tree.Source.PositionOf(line[0].Start).Line;
            bool isHead = heads.Contains(number);
            inFlow = isHead ? flows.Contains(number) : inFlow;
            inStatement |= isHead;
            bool indentedComment = line[0].Kind == TokenKind.Comment && tree.Source.PositionOf(line[0].Start).Column > 1 && inStatement;
            bool detail = !isHead && (line[0].Kind == TokenKind.Comment ? indentedComment : inStatement);
            Write(result, tree.Source, line, detail, align: detail && !inFlow && line[0].Kind == TokenKind.Word);
        }

        return result.ToString();
    }

    /// <summary>The tokens of each line without line ends and without spaces at its ends.</summary>
    private static IEnumerable<List<Token>> Lines(SyntaxTree tree)
    {
        var line = new List<Token>();
        foreach (var token in tree.Tokens)
        {
            if (token.Kind == TokenKind.NewLine)
            {
                yield return Trimmed(line);
                line = [];
            }
            else
            {
                line.Add(token);
            }
        }

        yield return Trimmed(line);
    }

    private static List<Token> Trimmed(List<Token> line)
    {
        int first = line.FindIndex(t => t.Kind != TokenKind.Space);
        int last = line.FindLastIndex(t => t.Kind != TokenKind.Space);
        return first < 0 ? [] : line[first..(last + 1)];
    }

    private static void Write(StringBuilder result, SourceText source, List<Token> line, bool detail, bool align)
    {
        result.Append(' ', detail ? DetailIndent : 0);
        int from = 0;
        if (align && line.Count > 2 && line[1].Kind == TokenKind.Space)
        {
            string word = source.Content.Substring(line[0].Start, line[0].Length);
            result.Append(word.PadRight(DetailWordWidth)).Append(" ");
            from = 2;
        }

        for (int i = from; i < line.Count; i++)
        {
            string text = source.Content.Substring(line[i].Start, line[i].Length);
            bool beforeComment = i + 1 < line.Count && line[i + 1].Kind == TokenKind.Comment;
            result.Append(line[i].Kind != TokenKind.Space ? text.TrimEnd() : beforeComment ? text.PadRight(2).Replace('\t', ' ') : detail && align ? " " : text.Replace('\t', ' '));
        }

        result.Append('\n');
    }
}
