using Floorplan.Drawing.Conventions;

namespace Floorplan.Drawing.Dxf;

/// <summary>
/// Colours and line types of layers, so that trades are told apart where everything is drawn in one width. The colours are those of
/// the palette, with patterns and reach in grey; text keeps away from them. Which trade has which: own choice.
/// </summary>
internal static class DxfLayers
{
    private static readonly Dictionary<string, string> Colours = new()
    {
        [Layers.WallHatch] = Palette.Grey,
        [Layers.FloorHatch] = Palette.Grey,
        [Layers.EquipmentClear] = Palette.Grey,
        [Layers.Worker] = Palette.Grey,
        [Layers.Water] = Palette.Blue,
        [Layers.Fixture] = Palette.Blue,
        [Layers.Drainage] = Palette.Green,
        [Layers.Power] = Palette.Vermillion,
        [Layers.Light] = Palette.Vermillion,
        [Layers.Air] = Palette.Purple,
    };

    public static int ColourOf(string layer) => Colours.TryGetValue(layer, out string? colour) ? DxfColour.OfShape(colour) : DxfColour.Ink;

    /// <summary>The dashes that a layer is made for (ISO 128-2 type 05 for clear spaces); null for a solid line.</summary>
    public static IReadOnlyList<double>? DashOf(string layer)
        => layer == Layers.EquipmentClear ? Dashes.LongDashDoubleDot(DrawingStandard.Iso.Narrow) : null;
}
