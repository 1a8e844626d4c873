using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Hatching;

/// <summary>The last step of a scene: its hatches become lines, with gaps for every text.</summary>
internal static class SceneHatches
{
    public static void Draw(SceneBuilder scene)
    {
        PaperBox[] texts = [.. scene.Items.OfType<TextItem>().Select(TextMeasure.Box)];
        foreach (var hatch in scene.Hatches)
        {
            foreach (var line in Hatcher.Lines(hatch, texts))
            {
                scene.Add(line, Band.Hatch);
            }
        }
    }
}
