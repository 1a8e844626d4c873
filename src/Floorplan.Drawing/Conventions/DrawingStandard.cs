using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Conventions;

/// <summary>The sizes that a sheet is drawn with, in paper millimetres. Origins: F = read in a public page, M = from memory.</summary>
public sealed record DrawingStandard
{
    /// <summary>
    /// Drawn to the conventions of ISO 128-2 (construction group 0.25/0.5/1.0 with 0.35; M), ISO 129-1 and ISO 3098 (F2).
    /// </summary>
    public static DrawingStandard Iso { get; } = new();

    /// <summary>Widths of the US National CAD Standard (F2); dimension gap 1/16 in, overshoot 1/8 in, rows 3/8 in (F2).</summary>
    public static DrawingStandard Us { get; } = new()
    {
        Fine = 0.18,
        Narrow = 0.25,
        Text = 0.35,
        Wide = 0.5,
        ExtraWide = 0.7,
        ExtensionGap = 1.6,
        ExtensionOvershoot = 3.2,
        FirstRow = 12,
        RowPitch = 9.5,
    };

    /// <summary>Hatching and patterns.</summary>
    public double Fine { get; init; } = 0.18;

    /// <summary>Dimension, extension and leader lines, visible outlines, simplified doors and equipment.</summary>
    public double Narrow { get; init; } = 0.25;

    /// <summary>Symbols.</summary>
    public double Text { get; init; } = 0.35;

    /// <summary>Outline of cut parts that are hatched or filled.</summary>
    public double Wide { get; init; } = 0.5;

    /// <summary>Special emphasis; 1.0 would swallow a thin panel wall, so it is not used for walls.</summary>
    public double ExtraWide { get; init; } = 1.0;

    /// <summary>Frame of the sheet (M).</summary>
    public double FrameLine { get; init; } = 0.7;

    public double NoteHeight { get; init; } = 2.5;

    /// <summary>No words are smaller: the step of the ISO 3098 series that notes have.</summary>
    public double SmallestHeight { get; init; } = 2.5;

    /// <summary>For marks of a few letters in a tag or on a line, and for fractions: nothing on a sheet is smaller. Own choice.</summary>
    public double TagHeight { get; init; } = 2;

    public double SubtitleHeight { get; init; } = 3.5;

    public double ViewTitleHeight { get; init; } = 5;

    public double SheetTitleHeight { get; init; } = 7;

    /// <summary>From the outline to where an extension line begins: 8 line widths (M).</summary>
    public double ExtensionGap { get; init; } = 2;

    /// <summary>How far an extension line passes the dimension line.</summary>
    public double ExtensionOvershoot { get; init; } = 2;

    /// <summary>From the outline to the first dimension row.</summary>
    public double FirstRow { get; init; } = 10;

    /// <summary>From one dimension row to the next.</summary>
    public double RowPitch { get; init; } = 7;

    /// <summary>From a dimension line to the foot of its text.</summary>
    public double DimensionTextGap { get; init; } = 1;

    /// <summary>Length of the 45 degree stroke that ends a dimension.</summary>
    public double Tick { get; init; } = 3;

    /// <summary>Shorter dimensions than this end in dots.</summary>
    public double DotBelow { get; init; } = 10;

    public double DotDiameter { get; init; } = 1;

    /// <summary>Open circle at the origin of running dimensions.</summary>
    public double OriginDiameter { get; init; } = 3;

    /// <summary>Between any two parallel lines, hatching included (ISO 128-2, F2).</summary>
    public double SmallestGap { get; init; } = 0.7;

    /// <summary>From this width up a line must not cut text.</summary>
    public double HeavyFrom { get; init; } = 0.35;

    /// <summary>Walls thinner than this on paper are filled, thicker ones hatched.</summary>
    public double FilledWallBelow { get; init; } = 2;

    public static DrawingStandard For(UnitSystem units) => units == UnitSystem.Metric ? Iso : Us;
}
