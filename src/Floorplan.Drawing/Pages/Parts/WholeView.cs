using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Pages.Parts;

/// <summary>A view that is too large for its page, drawn once on paper of its own; each part is a cutting of it.</summary>
internal sealed class WholeView
{
    private readonly SceneBuilder scene;
    private readonly LabelPlacer labels;

    public WholeView(ISheetView view, PaperSpace size, double denominator, UnitSystem units)
    {
        View = view;
        scene = new SceneBuilder(denominator);
        labels = new LabelPlacer(scene);
        var box = PaperBox.At(new(0, 0), size.Width, size.Height);
        view.Draw(new ViewCanvas(scene, labels, box, denominator, DrawingStandard.For(units)));
    }

    public ISheetView View { get; }

    /// <summary>Where the texts stand that no label search places.</summary>
    public IReadOnlyList<PaperBox> Texts => [.. scene.Items.OfType<TextItem>().Select(TextMeasure.Box)];

    /// <summary>Adds what is in a window of the view's own paper to a page.</summary>
    /// <param name="to">Where the window's top left corner comes to stand.</param>
    public void CopyTo(ViewCanvas page, PaperBox window, PaperPoint to)
    {
        var by = to - new PaperPoint(window.Left, window.Top);
        scene.CopyTo(page.Scene, new SceneCrop(window), by);
        labels.CopyTo(page.Labels, window, by);
    }
}
