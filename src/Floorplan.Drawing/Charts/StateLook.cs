using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Sizing.Simulation.Charts;

namespace Floorplan.Drawing.Charts;

/// <summary>
/// How a state is drawn: by steps of grey and by lines, so that it is told apart without colour. People and stations share looks where they
/// mean alike: dark is hand work, light grey goes on without it, lines stand for time lost.
/// </summary>
internal static class StateLook
{
    private const string Dark = "#404040";

    /// <summary>Too light for the solid areas of a DXF file, where its outline stands for it.</summary>
    private const string Light = "#D4D4D4";

    private const double Fine = 0.18;

    private static readonly HatchStyle Stripes = new(45, 1.1);
    private static readonly HatchStyle Crossed = new(45, 1.4, HatchForm.Crossed);
    private static readonly HatchStyle Upright = new(90, 0.9);
    private static readonly HatchStyle Dots = new(0, 1.2, HatchForm.Dots);

    /// <summary>The states that leave paper blank.</summary>
    public static bool IsBlank(DayState state) => state is DayState.Wait or DayState.Starved;

    public static string Words(DayState state) => state switch
    {
        DayState.Work => "work",
        DayState.Carry => "carry",
        DayState.Walk => "walk with empty hands",
        DayState.Empty => "empty a bin",
        DayState.Wash => "wash hands",
        DayState.Rest => "rest",
        DayState.Wait => "wait",
        DayState.ByHand => "worked on by hand",
        DayState.ByItself => "runs or keeps items without hands",
        DayState.NoHands => "items wait, nobody works on them",
        DayState.Blocked => "done, not taken on",
        _ => "no item, or no whole batch",
    };

    public static void Draw(SceneBuilder scene, IReadOnlyList<IReadOnlyList<PaperPoint>> rings, DayState state, string group)
    {
        switch (state)
        {
            case DayState.Work or DayState.ByHand:
                scene.Fill(rings, Dark, Layers.Chart, group);
                break;
            case DayState.Carry or DayState.ByItself:
                scene.Fill(rings, Light, Layers.Chart, group);
                Outline(scene, rings, group);
                break;
            case DayState.Walk or DayState.NoHands:
                scene.Hatch(rings, Stripes, new Pen(Fine), Layers.Chart, group);
                Outline(scene, rings, group);
                break;
            case DayState.Empty or DayState.Blocked:
                scene.Hatch(rings, Crossed, new Pen(Fine), Layers.Chart, group);
                Outline(scene, rings, group);
                break;
            case DayState.Wash:
                scene.Hatch(rings, Upright, new Pen(Fine), Layers.Chart, group);
                Outline(scene, rings, group);
                break;
            case DayState.Rest:
                scene.Hatch(rings, Dots, new Pen(0.3), Layers.Chart, group);
                break;
            default:
                break;
        }
    }

    private static void Outline(SceneBuilder scene, IReadOnlyList<IReadOnlyList<PaperPoint>> rings, string group)
    {
        foreach (var ring in rings)
        {
            scene.Polyline(ring, true, new Pen(Fine), Layers.Chart, group);
        }
    }
}
