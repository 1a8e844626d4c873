namespace Floorplan.Language.Text;

/// <summary>The text of one file and the name it is reported under. Lines and columns count from 1.</summary>
public sealed class SourceText
{
    private readonly int[] lineStarts;

    public SourceText(string content, string path)
    {
        Content = content;
        Path = path;
        var starts = new List<int> { 0 };
        for (int i = 0; i < content.Length; i++)
        {
            if (LineEnds.IsLast(content, i))
            {
                starts.Add(i + 1);
            }
        }

        lineStarts = [.. starts];
    }

    public string Content { get; }

    public string Path { get; }

    public int LineCount => lineStarts.Length;

    /// <summary>The line (from 1) and column (from 1, in UTF-16 units) of an offset.</summary>
    public LinePosition PositionOf(int offset)
    {
        int index = Array.BinarySearch(lineStarts, offset);
        if (index < 0)
        {
            index = ~index - 1;
        }

        return new LinePosition(index + 1, offset - lineStarts[index] + 1);
    }

    /// <summary>The offset at which a line begins; <paramref name="line"/> counts from 1.</summary>
    public int StartOf(int line) => lineStarts[line - 1];

    /// <summary>One line without its line end; <paramref name="line"/> counts from 1.</summary>
    public string Line(int line)
    {
        int start = lineStarts[line - 1];
        int end = line < lineStarts.Length ? lineStarts[line] : Content.Length;
        return Content[start..end].TrimEnd('\r', '\n');
    }
}
