using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Drawing.Views;

/// <summary>What the layers of a plan view draw with.</summary>
public sealed record PlanCanvas(Plan Plan, ViewCanvas View, PlanTransform Transform)
{
    public SceneBuilder Scene => View.Scene;

    public LabelPlacer Labels => View.Labels;

    public DrawingStandard Standard => View.Standard;

    public Tape Tape => Tape.For(Plan.Units);

    public SymbolBrush Brush(string layer, string? group, Band band = Band.Object) => new(Scene, Standard, layer, group, band);
}
