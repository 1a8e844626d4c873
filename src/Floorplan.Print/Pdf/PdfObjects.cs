using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Floorplan.Print.Pdf;

/// <summary>
/// As much of reading a PDF as adding to one takes: its last cross-reference table, its trailer and single objects (ISO 32000-1,
/// 7.5.4 and 7.5.5). Reads what the library behind <see cref="PdfWriter"/> writes: one table, no object streams.
/// </summary>
internal sealed partial class PdfObjects
{
    private readonly string _text;
    private readonly Dictionary<int, int> _places = [];

    public PdfObjects(byte[] pdf)
    {
        // One character a byte, so that places in the text are places in the file.
        _text = Encoding.Latin1.GetString(pdf);
        int start = _text.LastIndexOf("startxref", StringComparison.Ordinal);
        Table = int.Parse(
            _text.AsSpan(start + 9, _text.IndexOf("%%EOF", start, StringComparison.Ordinal) - start - 9).Trim(),
            CultureInfo.InvariantCulture);
        int trailer = _text.IndexOf("trailer", Table, StringComparison.Ordinal);
        string ending = _text[trailer..start];
        Size = Number(SizeEntry(), ending);
        Root = Number(RootEntry(), ending);
        Info = Number(InfoEntry(), ending);
        ReadTable(trailer);
    }

    /// <summary>Where the table starts.</summary>
    public int Table { get; }

    /// <summary>One more than the highest object number.</summary>
    public int Size { get; }

    /// <summary>The object number of the catalogue.</summary>
    public int Root { get; }

    public int Info { get; }

    /// <summary>The dictionary of an object, with its brackets.</summary>
    public string Dictionary(int number)
    {
        int start = _text.IndexOf("<<", _places[number], StringComparison.Ordinal);
        return _text[start.._text.IndexOf("endobj", start, StringComparison.Ordinal)].TrimEnd();
    }

    /// <summary>Object numbers of the pages in order.</summary>
    public IEnumerable<int> Pages() => Pages(Number(PagesEntry(), Dictionary(Root)));

    private IEnumerable<int> Pages(int node)
    {
        var kids = KidsEntry().Match(Dictionary(node));
        return kids.Success ? Reference().Matches(kids.Groups[1].Value).SelectMany(m => Pages(Number(m))) : [node];
    }

    private void ReadTable(int end)
    {
        int number = 0;
        foreach (string line in _text[Table..end].Split('\n').Skip(1))
        {
            string[] parts = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (parts is [var place, _, "n" or "f"])
            {
                _places[number++] = int.Parse(place, CultureInfo.InvariantCulture);
            }
            else if (parts is [var first, _])
            {
                number = int.Parse(first, CultureInfo.InvariantCulture);
            }
        }
    }

    private static int Number(Regex entry, string text) => Number(entry.Match(text));

    private static int Number(Match match)
        => match.Success
            ? int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)
            : throw new InvalidOperationException("the PDF library writes its files in a way that this does not read");

    [GeneratedRegex(@"/Size (\d+)")]
    private static partial Regex SizeEntry();

    [GeneratedRegex(@"/Root (\d+) 0 R")]
    private static partial Regex RootEntry();

    [GeneratedRegex(@"/Info (\d+) 0 R")]
    private static partial Regex InfoEntry();

    [GeneratedRegex(@"/Pages (\d+) 0 R")]
    private static partial Regex PagesEntry();

    [GeneratedRegex(@"/Kids \[([^\]]*)\]")]
    private static partial Regex KidsEntry();

    [GeneratedRegex(@"(\d+) 0 R")]
    private static partial Regex Reference();
}
