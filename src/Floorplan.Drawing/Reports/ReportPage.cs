using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Reports;

/// <summary>One page that is being filled from the top. Sizes in paper mm.</summary>
internal sealed class ReportPage
{
    private const double PictureFoot = 12;

    private readonly SceneBuilder scene = new();
    private readonly string chapter;
    private readonly double width;
    private readonly double height;
    private readonly double margin;
    private readonly double foot;
    private readonly DrawingStandard standard;
    private SheetScene? picture;
    private double y;

    public ReportPage(string chapter, double width, double height, double margin, double foot, DrawingStandard standard)
    {
        (this.chapter, this.width, this.height) = (chapter, width, height);
        (this.margin, this.foot, this.standard) = (margin, foot, standard);
        y = margin;
    }

    /// <summary>A page of the size of a picture, with a foot under it.</summary>
    public static ReportPage Of(SheetScene picture, string chapter, DrawingStandard standard)
        => new(chapter, picture.WidthMm, picture.HeightMm + PictureFoot, PictureFoot, PictureFoot, standard) { picture = picture };

    public bool Fits(double tall) => y + tall <= height - margin - foot || y <= margin;

    public void Add(BlockRow row)
    {
        row.Draw(scene, new PaperPoint(margin, y));
        y += row.Height;
    }

    public void Skip(double gap) => y += gap;

    public SheetScene Finish(int number, int pages, string title)
    {
        double letters = standard.NoteHeight;
        double line = height - margin - foot + 4;
        double text = height - margin;
        if (picture is null)
        {
            scene.Line(
                new(margin, line), new(width - margin, line), new Pen(standard.Narrow), Layers.Frame, null, Band.Annotation);
        }

        string page = FormattableString.Invariant($"page {number} of {pages}");
        double room = width - (2 * margin) - TextMeasure.Width(page, letters) - 5;
        scene.Text(new TextItem(
            SafeText.Fit(SafeText.Clean($"{title}: {chapter}"), room, letters), new(margin, text), letters, TextAnchor.Start, Layers.Text));
        scene.Text(new TextItem(page, new(width - margin, text), letters, TextAnchor.End, Layers.Text));
        IEnumerable<SceneItem> items = picture is null ? scene.Items : picture.Items.Concat(scene.Items);
        return new SheetScene(
            FormattableString.Invariant($"report-{number}"), SafeText.Clean(chapter), SafeText.Clean($"{title}: {chapter}"), width, height,
            [.. items])
        {
            Page = number,
            Pages = pages,
        };
    }
}
