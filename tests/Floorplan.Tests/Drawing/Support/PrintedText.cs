using Floorplan.Drawing.Scene;
using Floorplan.Print.Pdf;
using UglyToad.PdfPig;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>
/// The letters of the pages of one sheet as an independent reader finds them in the PDF, without white space, in their order. What a sheet
/// says is looked for from top to bottom: each text after the one before it.
/// </summary>
internal sealed class PrintedText
{
    /// <summary>
    /// A text that goes on in the next column has a repeated head in the middle; it is read in stretches of at least so many letters.
    /// </summary>
    private const int ShortestStretch = 16;

    /// <summary>Only a text of more letters than these may be parted: shorter ones stand in one row of a table.</summary>
    private const int LongText = 90;

    private readonly string letters;
    private int at;

    private PrintedText(string letters) => this.letters = letters;

    public static PrintedText Of(IReadOnlyList<SheetScene> pages)
    {
        using var pdf = PdfDocument.Open(PdfWriter.Write(pages, new PdfInfo("t", "", "", null)));
        return new PrintedText(string.Concat(pdf.GetPages().Select(p => Solid(p.Text))));
    }

    /// <summary>All letters of a text, without white space and what no sheet draws.</summary>
    public static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    /// <summary>Whether the text stands there whole, after what was found last; the search goes on after it.</summary>
    public bool Next(params IEnumerable<string> cells)
    {
        string wanted = Solid(string.Concat(cells));
        int found = letters.IndexOf(wanted, at, StringComparison.Ordinal);
        if (found >= 0)
        {
            at = found + wanted.Length;
            return true;
        }

        return wanted.Length > LongText && cells.All(c => InStretches(Solid(c)));
    }

    /// <summary>The next search begins on the first page: blocks stand where there is room.</summary>
    public void Restart() => at = 0;

    /// <summary>Anywhere on the pages, in one piece.</summary>
    public bool Says(string text) => letters.Contains(Solid(text), StringComparison.Ordinal);

    /// <summary>In stretches as long as can be found, each after the one before.</summary>
    private bool InStretches(string wanted)
    {
        int from = at;
        while (wanted.Length > 0)
        {
            int length = wanted.Length;
            int found;
            while ((found = letters.IndexOf(wanted[..length], from, StringComparison.Ordinal)) < 0 && length > 0)
            {
                length--;
            }

            if (length < Math.Min(wanted.Length, ShortestStretch))
            {
                return false;
            }

            from = found + length;
            wanted = wanted[length..];
        }

        return true;
    }
}
