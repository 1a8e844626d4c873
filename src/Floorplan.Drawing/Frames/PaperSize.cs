using Floorplan.Language.Quantities;
using Floorplan.Language.Words;

namespace Floorplan.Drawing.Frames;

/// <summary>A sheet of paper, landscape, in mm.</summary>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216, smallest first; A3 is the default.</summary>
    public static IReadOnlyList<PaperSize> Iso { get; } =
        Series("A3", "A2", "A1", "A0");

    /// <summary>ASME Y14.1 sizes (F2), smallest first; 11 x 17 in is the default.</summary>
    public static IReadOnlyList<PaperSize> Us { get; } = Series("11 x 17 in", "17 x 22 in", "22 x 34 in", "34 x 44 in");

    public static IReadOnlyList<PaperSize> For(UnitSystem units) => units == UnitSystem.Metric ? Iso : Us;

    /// <summary>A size by the name that a <c>sheet</c> statement gives; null when unknown.</summary>
    public static PaperSize? Find(string name) => Paper.Find(name) is { } paper ? Of(paper) : null;

    private static PaperSize Of(Paper paper) => new(paper.Name, paper.Width, paper.Height);

    private static PaperSize[] Series(params IReadOnlyList<string> names) => [.. names.Select(n => Find(n)!)];
}
