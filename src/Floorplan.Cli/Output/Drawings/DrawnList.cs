using System.Globalization;
using System.Text;
using Floorplan.Model.Binding.Files.Disk;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>
/// The file <c>drawn-files.txt</c> beside drawings: what was written for each plan, so that a later run can take away what it no longer
/// writes. A line each: <c>plan NAME</c>, <c>title TEXT</c>, and <c>file HASH NAME</c> for each file; names and titles as in a link.
/// The list may come from a stranger: a name that no drawing of its plan has is not taken from it.
/// </summary>
internal sealed class DrawnList
{
    public const string Name = "drawn-files.txt";

    private const string Head =
        "# What floorplan draw wrote into this folder, with the hash of the text that each file was drawn from.\n"
            + "# It takes away those of these files that it no longer writes, and no others. Leave this list beside them.\n";

    private const int MostMegabytes = 1;

    private static readonly string[] Endings = [".svg", ".png", ".pdf", ".dxf", ".csv"];

    private readonly SortedDictionary<string, ListedPlan> plans = new(StringComparer.Ordinal);

    public IEnumerable<ListedPlan> Plans => plans.Values;

    public ListedPlan Of(string plan) => plans.GetValueOrDefault(plan) ?? new ListedPlan(plan, "", []);

    public void Set(ListedPlan plan) => plans[plan.Name] = plan;

    /// <summary>Reads the list of a folder; empty when there is none.</summary>
    /// <returns>Also a sentence when there is one that cannot be read.</returns>
    public static (DrawnList List, string? Problem) ReadFrom(string folder)
    {
        var list = new DrawnList();
        string path = Path.Combine(folder, Name);
        if (!Path.Exists(path) && new FileInfo(path).LinkTarget is null)
        {
            return (list, null);
        }

        try
        {
            if (new FileInfo(path).LinkTarget is not null || Directory.Exists(path))
            {
                return (list, "this is a link or a folder, not a list of files");
            }

            var read = PlainFile.Read(path, MostMegabytes);
            list.Add(read.Text ?? "");
            return (list, read.Problem);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return (list, problem.Message);
        }
    }

    public string ToText()
    {
        var text = new StringBuilder(Head);
        foreach (var plan in Plans.Where(p => p.Files.Count > 0))
        {
            text.Append(CultureInfo.InvariantCulture, $"plan {Uri.EscapeDataString(plan.Name)}\n");
            text.Append(CultureInfo.InvariantCulture, $"title {Uri.EscapeDataString(plan.Title)}\n");
            foreach (var (name, hash) in plan.Files)
            {
                text.Append(CultureInfo.InvariantCulture, $"file {hash} {Uri.EscapeDataString(name)}\n");
            }
        }

        return text.ToString();
    }

    private void Add(string text)
    {
        ListedPlan? plan = null;
        foreach (string line in text.Split('\n').Select(l => l.TrimEnd('\r')))
        {
            string[] words = line.Split(' ');
            switch (words)
            {
                case ["plan", var name]:
                    Set(plan = new ListedPlan(Uri.UnescapeDataString(name), "", []));
                    break;
                case ["title", var title] when plan is not null:
                    Set(plan = plan with { Title = Uri.UnescapeDataString(title) });
                    break;
                case ["file", var hash, var name] when plan is not null && IsDrawingOf(plan.Name, Uri.UnescapeDataString(name)):
                    plan.Files[Uri.UnescapeDataString(name)] = hash;
                    break;
                default:
                    break;
            }
        }
    }

    private static bool IsDrawingOf(string plan, string name)
        => name.AsSpan().IndexOfAny("/\\:\0") < 0
            && name.Length > plan.Length && name.StartsWith(plan, StringComparison.Ordinal) && name[plan.Length] is '-' or '.'
            && Endings.Contains(Path.GetExtension(name));
}
