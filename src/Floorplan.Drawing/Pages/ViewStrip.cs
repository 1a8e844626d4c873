using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Pages;

/// <summary>What stands under a view: which way north is, its title with the scale, and a bar scale.</summary>
internal static class ViewStrip
{
    public const double Height = 15;

    private const double Indent = 2;
    private const double BeforeBar = 6;

    public static double Width(ISheetView view, double denominator, UnitSystem units, bool hasBar)
        => Indent + (view.IsPlan ? NorthArrow.Width : 0) + TitleWidth(view, denominator, units) + (hasBar ? BeforeBar + BarScale.Width : 0);

    public static void Draw(SceneBuilder scene, SheetContent content, PlacedView placed, double denominator)
    {
        var standard = DrawingStandard.For(content.Units);
        double y = placed.Strip.Top + 8;
        double x = placed.Strip.Left + Indent;
        if (placed.View.IsPlan)
        {
            NorthArrow.Draw(scene, new(x + 5, y), content.TrueNorth, standard);
            x += NorthArrow.Width;
        }

        scene.Text(
            new TextItem(
                Title(placed.View, denominator, content.Units), new(x, y + (standard.SubtitleHeight / 2)), standard.SubtitleHeight,
                TextAnchor.Start, Layers.Text, Bold: true));
        if (placed.HasBar)
        {
            double after = x + TitleWidth(placed.View, denominator, content.Units) + BeforeBar;
            BarScale.Draw(scene, new(after, y - 2), denominator, content.Units, standard);
        }
    }

    private static string Title(ISheetView view, double denominator, UnitSystem units)
        => view.HasScale ? $"{view.Title}  {ScaleSeries.Text(denominator, units)}" : view.Title;

    private static double TitleWidth(ISheetView view, double denominator, UnitSystem units)
        => TextMeasure.Width(Title(view, denominator, units), DrawingStandard.For(units).SubtitleHeight, true);
}
