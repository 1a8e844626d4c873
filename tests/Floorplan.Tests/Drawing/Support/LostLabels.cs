using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>
/// Labels of the views of a sheet that neither stand at their place nor in the tables "Key to marks" and "Not shown at its place". What was
/// asked for is taken from the views, drawn apart; where it went is read from the pages.
/// </summary>
internal static partial class LostLabels
{
    private const string Leg = "leg";

    public static IEnumerable<string> Of(SheetContent content, IReadOnlyList<SheetScene> pages, PrintedText printed)
    {
        var texts = pages.Texts().Where(t => t.Layer != Layers.Schedule).ToLookup(t => Thing(t.Group), t => t.Text);
        foreach (var view in content.Views)
        {
            var labels = Asked(view, pages[0].Denominator, content);
            foreach (var label in labels.Requests.Where(l => !IsSaid(l, [.. texts[Thing(l.Group)]], printed)))
            {
                yield return $"label {label.Id} of {view.Title}: {string.Join(" / ", label.Lines)}";
            }

            // Those of before the search for places; the search adds its own.
            foreach (var (of, words) in labels.AllNotShown.Where(n => !printed.Says(n.Of + n.Words)))
            {
                yield return $"not shown in {view.Title}: {of} | {words}";
            }
        }
    }

    private static LabelPlacer Asked(ISheetView view, double denominator, SheetContent content)
    {
        var scene = new SceneBuilder(denominator);
        var labels = new LabelPlacer(scene);
        var size = view.Measure(denominator);
        view.Draw(new ViewCanvas(
            scene, labels, PaperBox.At(new(0, 0), size.Width, size.Height), denominator, DrawingStandard.For(content.Units)));
        return labels;
    }

    /// <param name="drawn">The texts of the same thing outside tables.</param>
    private static bool IsSaid(LabelRequest label, IReadOnlyCollection<string> drawn, PrintedText printed)
    {
        string words = string.Join(' ', label.Lines);
        string together = PrintedText.Solid(string.Concat(drawn));
        if (label.Lines.All(drawn.Contains)
            || Stands(words)
            || (label.KeyText is { } whole && Stands(whole))
            || drawn.Any(t => t.EndsWith('…'))
            || (label.Short is { } text && drawn.Contains(text)))
        {
            return true;
        }

        // Ends of legs near each other share a label; which of them do depends on where the view stands on its page.
        if (!label.Optional && Thing(label.Group) == Leg)
        {
            return label.Lines.All(printed.Says);
        }

        return label.Optional
            ? label.ListedUnder is not { } under || printed.Says(under + words)
            : drawn.Where(t => KeyMark().IsMatch(t)).Append(label.KeyMark ?? "-")
                .Any(mark => printed.Says(mark + (label.KeyText ?? words)));

        // Names of rooms are broken to lines as the floor is free round them on that page. Where one is shortened, InventedPlansTests
        // holds that the set says it in full.
        bool Stands(string text) => together.Contains(PrintedText.Solid(text), StringComparison.Ordinal);
    }

    private static string Thing(string? group) => group?.StartsWith("leg:", StringComparison.Ordinal) == true ? Leg : group ?? "";

    [GeneratedRegex("^k[0-9]+$")]
    private static partial Regex KeyMark();
}
