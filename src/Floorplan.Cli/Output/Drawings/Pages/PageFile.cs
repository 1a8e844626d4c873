using System.Globalization;
using System.Text.RegularExpressions;

namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>A file of the folder as the page shows it; what it is follows from its name, whichever run wrote it.</summary>
/// <param name="Name">Without its folder.</param>
/// <param name="Sheet">Such as <c>6</c> or <c>6.2</c>; null for what is no sheet.</param>
/// <param name="Number">Of the sheet; 0 for what is no sheet.</param>
/// <param name="Part">Of a sheet that goes on; else 1.</param>
/// <param name="What">What it is, in words.</param>
/// <param name="Format">In capitals: <c>SVG</c>.</param>
internal sealed partial record PageFile(
    string Name, PageReader Reader, string? Sheet, int Number, int Part, string What, string Format)
{
    public bool IsPicture => Format is "SVG" or "PNG";

    /// <param name="plan">The name that the files of its plan begin with.</param>
    public static PageFile Of(string plan, string file)
    {
        string rest = file.StartsWith(plan, StringComparison.Ordinal) ? file[plan.Length..] : file;
        string format = Path.GetExtension(file).TrimStart('.').ToUpperInvariant();
        if (OfSheet().Match(rest) is { Success: true } sheet
            && int.TryParse(sheet.Groups["number"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            int part = int.TryParse(sheet.Groups["part"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int said) ? said : 1;
            string name = sheet.Groups["number"].Value + (sheet.Groups["part"].Success ? "." + sheet.Groups["part"].Value : "");
            return new(
                file, PageReaders.OfSheet(number), name, number, part, $"Sheet {name}, {Spaced(sheet.Groups["name"].Value)}", format);
        }

        if (OfHoles().Match(rest) is { Success: true } holes)
        {
            return new(
                file, PageReader.Welder, null, 0, 1, $"Holes for a cutting table, {Spaced(holes.Groups["wall"].Value)}", format);
        }

        string stem = Path.GetFileNameWithoutExtension(rest).TrimStart('-');
        return format switch
        {
            "PDF" => new(
                file, PageReader.Everybody, null, 0, 1, "All sheets for printing" + (stem.Length > 0 ? ", " + Spaced(stem) : ""), format),
            "CSV" => new(file, PageReaders.OfSchedule(stem), null, 0, 1, $"Schedule of {Spaced(stem)}", format),
            _ => new(file, PageReader.Everybody, null, 0, 1, file, format),
        };
    }

    private static string Spaced(string name) => name.Replace('-', ' ');

    [GeneratedRegex(@"^-(?<number>[0-9]{1,3})(\.(?<part>[0-9]{1,3}))?-(?<name>.+?)(-mm)?\.(svg|png|dxf)$")]
    private static partial Regex OfSheet();

    [GeneratedRegex(@"^-cut-outs-(?<wall>.+)-mm\.dxf$")]
    private static partial Regex OfHoles();
}
