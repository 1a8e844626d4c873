using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Letters and line of a run. Line types are told apart without colour; waste is dashed because it is under the floor.</summary>
internal sealed record PipeLook(string Letters, string Name, Pen Pen)
{
    /// <summary>What is piped, in the order of legend and labels.</summary>
    public static readonly IReadOnlyList<NeedKind> Piped = [NeedKind.ColdWater, NeedKind.HotWater, NeedKind.Drain];

    private const double Width = 0.5;

    public static PipeLook Of(NeedKind kind) => kind switch
    {
        NeedKind.ColdWater => new("CW", "cold water", new Pen(Width, Palette.Blue)),
        NeedKind.HotWater => new("HW", "hot water", new Pen(Width, Palette.Vermillion, Dashes.LongDashDot(0.25))),
        _ => new("WW", "waste water, under the floor", new Pen(Width, Palette.Black, Dashes.Dashed(0.25))),
    };
}
