using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

public enum PipeKind
{
    Cold,
    Hot,
    Waste,
}

/// <summary>Letters and line of a run. Line types are told apart without colour; waste is dashed because it is under the floor.</summary>
internal sealed record PipeLook(string Letters, string Name, Pen Pen)
{
    private const double Width = 0.5;

    public static PipeLook Of(PipeKind kind) => kind switch
    {
        PipeKind.Cold => new("CW", "cold water", new Pen(Width, Palette.Blue)),
        PipeKind.Hot => new("HW", "hot water", new Pen(Width, Palette.Vermillion, Dashes.LongDashDot(0.25))),
        _ => new("WW", "waste water, under the floor", new Pen(Width, Palette.Black, Dashes.Dashed(0.25))),
    };
}
