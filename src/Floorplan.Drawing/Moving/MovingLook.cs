using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Moving;

/// <summary>How people, loads and counts look, round the origin. The same in a picture that moves and in a still one.</summary>
internal static class MovingLook
{
    /// <summary>Half of what a person takes, mm; more where the mark is long.</summary>
    public const double PersonRadius = 2.3;

    /// <summary>Where a load is drawn beside who carries it, mm.</summary>
    public static readonly PaperPoint BesidePerson = new(2.6, 2.6);

    public const double DigitWidth = 1.9;
    public const double DigitHeight = 3.2;
    public const double DigitLetters = 2.2;

    private const double Letters = 2;
    private const string Dark = "#404040";

    /// <summary>A dark disc with a letter for the crew and a number.</summary>
    public static IReadOnlyList<SceneItem> Person(string mark, string name) => Made(scene =>
    {
        double radius = Math.Max(PersonRadius, (TextMeasure.Width(mark, Letters, true) / 2) + 0.4);
        PaperPoint[] disc = [.. Enumerable.Range(0, 20).Select(i => At(i * Math.PI / 10, radius))];
        scene.Fill([disc], Dark, Layers.Worker, name, Band.Text);
        scene.Polyline(disc, true, new Pen(0.25, Palette.White), Layers.Worker, name, Band.Text);
        scene.Text(
            new TextItem(
                mark, new(0, Letters / 2), Letters, TextAnchor.Middle, Layers.Worker, name, Bold: true, Colour: Palette.White));
    });

    /// <summary>One item is a black square; what carries several is a white box with their number, empty on the way back.</summary>
    public static IReadOnlyList<SceneItem> Load(int items, bool isCarrier) => Made(scene =>
    {
        if (!isCarrier)
        {
            var box = PaperBox.Around(BesidePerson, 1.7, 1.7);
            scene.Fill(box, Palette.Black, Layers.Flow, "item", Band.Text);
            scene.Rectangle(box, new Pen(0.2, Palette.White), Layers.Flow, "item", Band.Text);
            return;
        }

        string text = items > 0 ? FormattableString.Invariant($"{items}") : "";
        var carrier = PaperBox.Around(BesidePerson, Math.Max(4, 1.4 + (1.6 * text.Length)), 3);
        scene.Fill(carrier, Palette.White, Layers.Flow, "trolley", Band.Text);
        scene.Rectangle(carrier, new Pen(0.35), Layers.Flow, "trolley", Band.Text);
        if (text.Length > 0)
        {
            scene.Text(
                new TextItem(
                    text, new(carrier.Centre.X, carrier.Centre.Y + (Letters / 2)), Letters, TextAnchor.Middle, Layers.Flow, "trolley"));
        }
    });

    private static PaperPoint At(double angle, double radius)
        => new(Math.Round(radius * Math.Cos(angle), 2), Math.Round(radius * Math.Sin(angle), 2));

    private static IReadOnlyList<SceneItem> Made(Action<SceneBuilder> draw)
    {
        var scene = new SceneBuilder();
        draw(scene);
        return [.. scene.Items];
    }
}
