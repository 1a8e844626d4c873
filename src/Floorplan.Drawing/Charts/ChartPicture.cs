using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Hatching;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Charts;

/// <summary>
/// Charts under each other as a picture of their own, without frame: each with its title over it.
/// </summary>
internal static class ChartPicture
{
    /// <summary>As wide as A4 or letter lying, mm.</summary>
    public const double UsualWidth = 250;

    private const double Margin = 6;
    private const double TitleHeight = 9;
    private const int LongestDescription = 600;

    /// <param name="width">Of the charts, mm.</param>
    public static SheetScene Draw(
        string name, string title, string description, IReadOnlyList<ISheetView> charts, double width, DrawingStandard standard)
    {
        var scene = new SceneBuilder();
        var labels = new LabelPlacer(scene);
        double y = Margin;
        Words(scene, SafeText.Fit(SafeText.Clean(title), width, standard.ViewTitleHeight, true), y, standard.ViewTitleHeight);
        y += standard.ViewTitleHeight + 5;
        foreach (var chart in charts)
        {
            var size = chart.Measure(1);
            Words(scene, SafeText.Fit(SafeText.Clean(chart.Title), width, standard.SubtitleHeight, true), y, standard.SubtitleHeight);
            y += TitleHeight;
            chart.Draw(new ViewCanvas(scene, labels, PaperBox.At(new(Margin, y), size.Width, size.Height), 1, standard));
            y += size.Height + 3;
        }

        SceneHatches.Draw(scene);
        return new SheetScene(
            name, SafeText.Clean(title), SafeText.Clean(description, LongestDescription), width + (2 * Margin), y + Margin,
            [.. scene.Items]);
    }

    private static void Words(SceneBuilder scene, string words, double top, double letters) => scene.Text(
        new TextItem(words, new(Margin, top + letters), letters, TextAnchor.Start, Layers.Text, Bold: true));
}
