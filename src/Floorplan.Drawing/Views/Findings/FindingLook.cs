using Floorplan.Checks.Findings;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Drawing.Views.Findings;

/// <summary>How heavy a finding is, in the shapes of its mark and of the balloon round its number; no colour. Shapes: own choice.</summary>
/// <param name="Words">For the legend.</param>
/// <param name="Filled">The share of its mark that is full.</param>
internal sealed record FindingLook(string Words, TagShape Balloon, double Filled)
{
    /// <summary>Of a balloon in the legend, paper mm.</summary>
    private const double SampleSide = 4.4;

    private const double SampleOffset = 3.4;

    private static readonly FindingLook Error = new("finding: error", TagShape.Octagon, 1);
    private static readonly FindingLook Warning = new("finding: warning", TagShape.Diamond, 0.4);
    private static readonly FindingLook Note = new("finding: note, accepted", TagShape.Gable, 0);

    /// <summary>The heaviest first.</summary>
    public static IReadOnlyList<FindingLook> All { get; } = [Error, Warning, Note];

    public static FindingLook Of(Finding finding) => finding switch
    {
        { AcceptedBy: not null } => Note,
        { Severity: Severity.Error } => Error,
        { Severity: Severity.Warning } => Warning,
        _ => Note,
    };

    /// <summary>Mark and empty balloon side by side.</summary>
    public LegendEntry Legend(DrawingStandard standard) => new(Words, (scene, box) =>
    {
        var brush = new SymbolBrush(scene, standard, Layers.Legend);
        FindingMarkSymbol.Draw(brush, box.Centre - new PaperPoint(SampleOffset, 0), Filled);
        brush.Ring(
            brush.Narrow, TagOutline.Of(Balloon, PaperBox.Around(box.Centre + new PaperPoint(SampleOffset, 0), SampleSide, SampleSide)));
    });
}
