using Floorplan.Sizing.Frames;

namespace Floorplan.Sizing;

/// <content>Holes in the shell and their frames.</content>
public sealed partial class PlanFacts
{
    private IReadOnlyList<CutOut>? cutOuts;
    private IReadOnlyList<WallCut>? wallCuts;
    private IReadOnlyList<ServiceHole>? holes;
    private CutList? cutList;

    /// <summary>Wall by wall, each wall from its west or south end.</summary>
    public IReadOnlyList<CutOut> CutOuts => Once(ref cutOuts, f => Frames.CutOuts.Of(f.Plan));

    /// <summary>How much of each wall of a container the holes take.</summary>
    public IReadOnlyList<WallCut> WallCuts => Once(ref wallCuts, WallCut.Of);

    /// <summary>For pipes, cables, fans and drains.</summary>
    public IReadOnlyList<ServiceHole> Holes => Once(ref holes, f => ServiceHole.Of(f.Plan));

    public CutList CutList => Once(ref cutList, f => CutList.Of(f.CutOuts, f.Plan.Units));
}
