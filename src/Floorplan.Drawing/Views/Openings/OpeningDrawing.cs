using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model.Openings;

namespace Floorplan.Drawing.Views.Openings;

/// <summary>Picks the symbol of an opening and gives it its real size.</summary>
internal static class OpeningDrawing
{
    public static void Draw(SymbolBrush brush, OpeningPlace place, PlanTransform transform)
    {
        var opening = place.Opening;
        if (!PlanCut.Cuts(opening.Sill, opening.Sill + opening.Height) && opening.Kind is not OpeningKind.Chute)
        {
            // Wholly above or below the cut: hidden lines.
            brush.Box(place.Reveal, brush.Dashed);
            return;
        }

        switch (opening.Kind)
        {
            case OpeningKind.CargoDoor:
                DrawCargoDoor(brush, place);
                break;
            case OpeningKind.Hatch:
                HatchSymbol.Draw(brush, place.Reveal);
                break;
            case OpeningKind.Window:
                WindowSymbol.Draw(brush, place.Reveal, place.AlongX);
                break;
            case OpeningKind.Vent:
                VentSymbol.Draw(brush, place.Reveal, place.AlongX);
                break;
            case OpeningKind.Chute:
                ChuteSymbol.Draw(brush, place.Reveal, Outward(opening));
                break;
            case OpeningKind.Door when opening.Swing is { } swing:
                DrawDoor(brush, place, swing, transform);
                break;
            default:
                OpeningSymbol.Draw(brush, place.Reveal, place.AlongX);
                break;
        }
    }

    private static void DrawCargoDoor(SymbolBrush brush, OpeningPlace place)
    {
        var outward = PaperShapes.Times(Outward(place.Opening), (place.AlongX ? place.Reveal.Height : place.Reveal.Width) / 2);
        var from = place.AlongX ? new PaperPoint(place.Reveal.Left, place.Middle.Y) : new PaperPoint(place.Middle.X, place.Reveal.Top);
        var to = place.AlongX ? new PaperPoint(place.Reveal.Right, place.Middle.Y) : new PaperPoint(place.Middle.X, place.Reveal.Bottom);
        CargoDoorSymbol.Draw(brush, from + outward, to + outward);
    }

    /// <summary>A chute runs from its first room to the second.</summary>
    private static PaperPoint Outward(Opening opening) => opening.Wall.Direction();

    private static void DrawDoor(SymbolBrush brush, OpeningPlace place, Swing swing, PlanTransform transform)
    {
        switch (swing.Kind)
        {
            case SwingKind.Hinged or SwingKind.Double:
                foreach (var leaf in swing.Leaves)
                {
                    var hinge = transform.ToPaper(leaf.StartPoint.Coordinate);
                    var open = transform.ToPaper(leaf.EndPoint.Coordinate);
                    HingedDoorSymbol.Draw(brush, hinge, open, Shut(place, hinge, PaperShapes.Length(open - hinge)));
                }

                break;
            case SwingKind.Sliding:
                foreach (var leaf in swing.Leaves)
                {
                    var a = transform.ToPaper(leaf.StartPoint.Coordinate);
                    var b = transform.ToPaper(leaf.EndPoint.Coordinate);
                    bool startsNearer = PaperShapes.Length(a - place.Middle) <= PaperShapes.Length(b - place.Middle);
                    SlidingDoorSymbol.Draw(brush, startsNearer ? a : b, startsNearer ? b : a);
                }

                break;
            case SwingKind.Strip:
                StripCurtainSymbol.Draw(brush, place.Start, place.End);
                break;
            default:
                RollUpDoorSymbol.Draw(brush, place.Reveal);
                break;
        }
    }

    /// <summary>The free end of a shut leaf: from its hinge along the wall towards the far end of the hole.</summary>
    private static PaperPoint Shut(OpeningPlace place, PaperPoint hinge, double length)
    {
        var along = place.AlongX
            ? new PaperPoint(Math.Sign(place.Middle.X - hinge.X), 0)
            : new PaperPoint(0, Math.Sign(place.Middle.Y - hinge.Y));
        return hinge + PaperShapes.Times(along, length);
    }
}
