using System.Globalization;
using System.Text;
using Floorplan.Cli.Output.Reports;

namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>One plan on the page: its picture, what was found, its files.</summary>
/// <param name="level">Of its heading.</param>
/// <param name="among">The page has other plans too.</param>
internal sealed class PagePlan(StringBuilder html, int level, bool among)
{
    /// <summary>Wide enough on a telephone where no style sheet is read, CSS pixels; the style makes it as wide as the page.</summary>
    private const int PictureWidth = 264;

    private const int FirstSheet = 1;
    private const int DaySheet = 10;

    /// <param name="more">Files of the same text that an earlier run drew.</param>
    public void Write(DrawnPlan plan, IReadOnlyList<string> more)
    {
        var examination = plan.Examination;
        PageFile[] files = [.. plan.FileNames.Concat(more).Select(f => PageFile.Of(plan.Name, f))];
        var about = About(plan, more);
        html.Append(PageText.Heading(level, TitleOf(examination.Plan!.Head.Title, plan.Name)));
        html.Append("<p>").Append(PageText.Text(Path.GetFileName(plan.Input.Input.Name))).Append(": ")
            .Append(PageText.Text(Counts.Of(examination).Text())).Append(".</p>\n");
        Untold(plan);
        Picture("Plan", FirstSheet, files, plan.Name, plan);
        html.Append(PageText.Heading(level + 1, "Findings"));
        FindingList.Write(html, examination.Findings);
        if (files.Any(f => f.Number == DaySheet))
        {
            Picture("The day", DaySheet, files, plan.Name, plan);
        }

        html.Append(PageText.Heading(level + 1, "Files"));
        new FileLists(among ? plan.Name : "", about).Write(html, files, level + 2);
    }

    /// <summary>A plan that an earlier run drew: its sheet 9 has what was found then.</summary>
    public void Write(OtherDrawings other)
    {
        PageFile[] files = [.. other.Files.Select(f => PageFile.Of(other.Plan, f))];
        html.Append(PageText.Heading(level, TitleOf(other.Title, other.Plan)));
        html.Append("<p>").Append(PageText.Text(other.Plan))
            .Append(": drawn by an earlier run; what was found then is on its sheet 9.</p>\n");
        Picture("Plan", FirstSheet, files, other.Plan, null);
        html.Append(PageText.Heading(level + 1, "Files"));
        new FileLists(other.Plan, new Dictionary<string, string>()).Write(html, files, level + 2);
    }

    public static string TitleOf(string title, string name) => PageText.Text(title).Length > 0 ? title : name;

    /// <summary>What the run could not draw, so that nobody looks for it.</summary>
    private void Untold(DrawnPlan plan)
    {
        foreach (string sentence in plan.NotDrawn.Select(s => $"Not drawn: {s.Message}. Way out: {s.WayOut}.").Concat(plan.NotCut))
        {
            html.Append("<p><strong>").Append(PageText.Text(sentence)).Append("</strong></p>\n");
        }
    }

    private static PageFile? PictureOf(int number, IEnumerable<PageFile> files) => files.Where(f => f.Number == number && f.IsPicture)
        .OrderBy(f => f.Part).ThenBy(f => f.Format == "SVG" ? 0 : 1).FirstOrDefault();

    /// <param name="number">The sheet whose first page is shown.</param>
    /// <param name="drawn">By this run; null when an earlier run drew it.</param>
    private void Picture(string heading, int number, IReadOnlyList<PageFile> files, string plan, DrawnPlan? drawn)
    {
        html.Append(PageText.Heading(level + 1, heading));
        if (PictureOf(number, files) is not { } picture)
        {
            html.Append(
                CultureInfo.InvariantCulture, $"<p>There is no picture of sheet {number} here; the files below hold what was drawn.</p>\n");
            return;
        }

        var sheet = drawn?.Sheets.FirstOrDefault(
            s => picture.Name == drawn.FileOf(s, DrawFormat.Svg) || picture.Name == drawn.FileOf(s, DrawFormat.Png));
        string height = sheet is null
            ? ""
            : string.Create(CultureInfo.InvariantCulture, $" height=\"{Math.Round(PictureWidth * sheet.HeightMm / sheet.WidthMm):0}\"");
        string what = picture.What + (among ? $" of {plan}" : "");
        string address = PageText.Address(picture.Name);
        string words = sheet is null ? what : $"{sheet.Title}. {sheet.Description}";
        html.Append(CultureInfo.InvariantCulture, $"<figure>\n<a class=\"picture\" href=\"{address}\"><img src=\"{address}\" ")
            .Append(CultureInfo.InvariantCulture, $"alt=\"{PageText.Text(words)}\" width=\"{PictureWidth}\"{height}/></a>\n")
            .Append(CultureInfo.InvariantCulture, $"<figcaption data-file=\"{PageText.Text(picture.Name)}\">{PageText.Text(what)}")
            .Append("<span class=\"screen\">. The picture opens in full size.</span></figcaption>\n</figure>\n");
    }

    private static Dictionary<string, string> About(DrawnPlan plan, IReadOnlyList<string> more)
    {
        var about = more.ToDictionary(f => f, _ => "Drawn from the same text by an earlier run.");
        foreach (var sheet in plan.Sheets)
        {
            foreach (string file in plan.Formats.Where(f => f != DrawFormat.Pdf).Select(f => plan.FileOf(sheet, f)))
            {
                about[file] = sheet.Description;
            }
        }

        foreach (var schedule in plan.Schedules)
        {
            about[plan.FileOf(schedule)] =
                string.Create(CultureInfo.InvariantCulture, $"{schedule.Rows.Count} {(schedule.Rows.Count == 1 ? "row" : "rows")}");
        }

        return about;
    }
}
