using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Moving;

/// <summary>The counts of one station: items at it, and beside them on grey the items that wait for it.</summary>
/// <param name="Step">Index of its step in the line.</param>
/// <param name="At">Top left corner.</param>
/// <param name="Digits">Of the larger of both counts.</param>
internal sealed record CountBox(int Step, string Of, PaperPoint At, int Digits)
{
    private const double Pad = 0.5;

    public static double WidthOf(int digits) => 2 * ((digits * MovingLook.DigitWidth) + (2 * Pad));

    public const double Height = MovingLook.DigitHeight + (2 * Pad);

    public PaperBox Box => PaperBox.At(At, WidthOf(Digits), Height);

    /// <summary>Where the first figure of the left or the right count stands.</summary>
    public PaperPoint Number(bool waiting) => new(At.X + Pad + (waiting ? WidthOf(Digits) / 2 : 0), At.Y + Pad);

    public void Draw(SceneBuilder scene)
    {
        double middle = At.X + (WidthOf(Digits) / 2);
        scene.Fill(Box with { Right = middle }, Palette.White, Layers.Marks, "count:" + Of, Band.Annotation);
        scene.Fill(Box with { Left = middle }, Palette.LightGrey, Layers.Marks, "count:" + Of, Band.Annotation);
        scene.Rectangle(Box, new Pen(0.25), Layers.Marks, "count:" + Of, Band.Annotation);
        scene.Line(new(middle, Box.Top), new(middle, Box.Bottom), new Pen(0.25), Layers.Marks, "count:" + Of, Band.Annotation);
    }
}
