using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>One standing worker seen from above: shoulders, head, and a nose that shows which way the worker faces.</summary>
public static class WorkerSymbol
{
    // Shares of the shoulder breadth; drawn for looks, not measured.
    private const double DepthShare = 0.42;
    private const double HeadShare = 0.3;
    private const double NoseShare = 0.07;

    /// <param name="faces">Unit vector on paper.</param>
    /// <param name="shoulders">Breadth on paper, mm.</param>
    public static void Draw(SymbolBrush brush, PaperPoint centre, PaperPoint faces, double shoulders)
    {
        double across = PaperShapes.Degrees(PaperShapes.Left(faces));
        var body = PaperShapes.Ellipse(centre, shoulders / 2, shoulders * DepthShare / 2, across);
        brush.Fill(body, Palette.White);
        brush.Ring(brush.Narrow, body);
        double head = shoulders * HeadShare / 2;
        var tip = centre + PaperShapes.Times(faces, head + (shoulders * NoseShare));
        var cheek = PaperShapes.Times(PaperShapes.Left(faces), head * 0.5);
        brush.Ring(brush.Narrow, PaperShapes.Ellipse(centre, head, head, 0));
        brush.Path(brush.Narrow, centre + PaperShapes.Times(faces, head * 0.86) + cheek, tip, centre
            + PaperShapes.Times(faces, head * 0.86) - cheek);
    }
}
