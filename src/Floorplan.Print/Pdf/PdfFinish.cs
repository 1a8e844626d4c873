using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Floorplan.Print.Pdf;

/// <summary>
/// Adds what the PDF library cannot write: bookmarks, the language, and page sizes that are not whole points. It is an incremental
/// update (ISO 32000-1, 7.5.6, 12.3.3 and 14.11.2): the file as it was, then the objects that are new or changed, and a table of
/// where they are.
/// </summary>
internal static partial class PdfFinish
{
    /// <param name="pages">The title and the size in points of each page, in order.</param>
    public static byte[] Add(byte[] pdf, IReadOnlyList<(string Title, double Width, double Height)> pages)
    {
        var objects = new PdfObjects(pdf);
        int outline = objects.Size;
        var update = new Update(pdf);
        update.Object(objects.Root, Catalogue(objects.Dictionary(objects.Root), outline));
        update.Object(
            outline, Invariant($"<</Type /Outlines /First {outline + 1} 0 R /Last {outline + pages.Count} 0 R /Count {pages.Count}>>"));
        foreach (var (i, (page, (title, width, height))) in objects.Pages().Zip(pages).Index())
        {
            int number = outline + 1 + i;
            string before = i > 0 ? Invariant($" /Prev {number - 1} 0 R") : "";
            string after = i + 1 < pages.Count ? Invariant($" /Next {number + 1} 0 R") : "";
            update.Object(number, Invariant($"<</Title {Text(title)} /Parent {outline} 0 R /Dest [{page} 0 R /Fit]{before}{after}>>"));
            update.Object(page, Sized(objects.Dictionary(page), width, height));
        }

        return update.End(objects);
    }

    // Viewers show the bookmarks; readers for the blind learn the language.
    private static string Catalogue(string dictionary, int outline)
        => dictionary[..^2] + Invariant($"\n/Outlines {outline} 0 R /PageMode /UseOutlines /Lang (en)>>");

    /// <summary>
    /// The library rounds sizes to whole points and draws from the upper left corner, so what is over goes at the right and below.
    /// </summary>
    private static string Sized(string dictionary, double width, double height) => MediaBox().Replace(dictionary, rounded =>
    {
        double top = double.Parse(rounded.Groups[1].Value, CultureInfo.InvariantCulture);
        return Invariant($"/MediaBox [0 {top - height:0.####} {width:0.####} {top:0.####}]");
    });

    /// <summary>As hexadecimal UTF-16, in which no bracket or backslash means anything.</summary>
    private static string Text(string text) => "<FEFF" + Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text)) + ">";

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    [GeneratedRegex(@"/MediaBox \[0 0 [0-9.]+ ([0-9.]+)\]")]
    private static partial Regex MediaBox();

    private sealed class Update(byte[] pdf)
    {
        private readonly StringBuilder _added = new("\n");
        private readonly List<(int Number, int Place)> _places = [];

        public void Object(int number, string dictionary)
        {
            _places.Add((number, pdf.Length + _added.Length));
            _added.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{dictionary}\nendobj\n");
        }

        public byte[] End(PdfObjects before)
        {
            int table = pdf.Length + _added.Length;
            _added.Append("xref\n");
            foreach (var (number, place) in _places.OrderBy(p => p.Number))
            {
                _added.Append(CultureInfo.InvariantCulture, $"{number} 1\n{place:D10} 00000 n \n");
            }

            _added.Append(
                CultureInfo.InvariantCulture,
                $"trailer\n<</Size {_places.Max(p => p.Number) + 1} /Root {before.Root} 0 R /Info {before.Info} 0 R /Prev "
                    + $"{before.Table}>>\nstartxref\n{table}\n%%EOF\n");
            return [.. pdf, .. Encoding.Latin1.GetBytes(_added.ToString())];
        }
    }
}
