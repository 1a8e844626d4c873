using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model.Openings;

namespace Floorplan.Drawing.Views.Openings;

/// <summary>Samples of the kinds of opening that a plan has.</summary>
internal static class OpeningLegend
{
    public static IEnumerable<LegendEntry> For(IReadOnlyList<Opening> openings, DrawingStandard standard)
    {
        foreach (var kind in openings.Where(o => o.Kind == OpeningKind.Door && o.Swing is not null).Select(o => o.Swing!.Kind).Distinct()
            .Order())
        {
            yield return new LegendEntry(Name(kind), (scene, box) => DrawDoor(new SymbolBrush(scene, standard, Layers.Legend), kind, box));
        }

        foreach (var kind in openings.Where(o => o.Kind != OpeningKind.Door || o.Swing is null).Select(o => o.Kind).Distinct().Order())
        {
            yield return new LegendEntry(Name(kind), (scene, box) => DrawOther(new SymbolBrush(scene, standard, Layers.Legend), kind, box));
        }
    }

    private static string Name(SwingKind kind) => kind switch
    {
        SwingKind.Hinged => "door and its swing",
        SwingKind.Double => "double door",
        SwingKind.Sliding => "sliding door",
        SwingKind.Strip => "strip curtain",
        _ => "roll-up door",
    };

    private static string Name(OpeningKind kind) => kind switch
    {
        OpeningKind.Hatch => "hatch over a sill",
        OpeningKind.Window => "window",
        OpeningKind.Chute => "chute, arrow downhill",
        OpeningKind.Vent => "vent",
        OpeningKind.CargoDoor => "cargo doors, shut",
        _ => "opening without a leaf",
    };

    private static void DrawDoor(SymbolBrush brush, SwingKind kind, PaperBox box)
    {
        double y = box.Bottom;
        double size = Math.Min(box.Height, box.Width);
        switch (kind)
        {
            case SwingKind.Hinged:
                HingedDoorSymbol.Draw(brush, new(box.Left, y), new(box.Left, y - size), new(box.Left + size, y));
                break;
            case SwingKind.Double:
                double half = Math.Min(box.Width / 2, box.Height);
                HingedDoorSymbol.Draw(brush, new(box.Centre.X - half, y), new(box.Centre.X - half, y - half), new(box.Centre.X, y));
                HingedDoorSymbol.Draw(brush, new(box.Centre.X + half, y), new(box.Centre.X + half, y - half), new(box.Centre.X, y));
                break;
            case SwingKind.Sliding:
                SlidingDoorSymbol.Draw(brush, new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y));
                break;
            case SwingKind.Strip:
                StripCurtainSymbol.Draw(brush, new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y));
                break;
            default:
                RollUpDoorSymbol.Draw(brush, PaperBox.Around(box.Centre, box.Width, box.Height / 2));
                break;
        }
    }

    private static void DrawOther(SymbolBrush brush, OpeningKind kind, PaperBox box)
    {
        var reveal = PaperBox.Around(box.Centre, box.Width, Math.Min(2.4, box.Height));
        switch (kind)
        {
            case OpeningKind.Hatch:
                HatchSymbol.Draw(brush, reveal);
                break;
            case OpeningKind.Window:
                WindowSymbol.Draw(brush, reveal, true);
                break;
            case OpeningKind.Chute:
                ChuteSymbol.Draw(brush, PaperBox.Around(box.Centre, box.Width / 2, 1), new(0, 1));
                break;
            case OpeningKind.Vent:
                VentSymbol.Draw(brush, reveal, true);
                break;
            case OpeningKind.CargoDoor:
                CargoDoorSymbol.Draw(brush, new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y));
                break;
            default:
                OpeningSymbol.Draw(brush, reveal, true);
                break;
        }
    }
}
