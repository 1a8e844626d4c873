using Floorplan.Language.Quantities;
using Floorplan.Language.Words;

namespace Floorplan.Drawing.Frames;

/// <summary>A sheet of paper as it lies before the reader, in mm.</summary>
/// <param name="Name">Of the paper, and <c>portrait</c> where it stands upright.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>What a set is drawn on unless the plan says otherwise: A3 or 11 x 17 in, the largest that small offices print.</summary>
    public static PaperSize Usual(UnitSystem units) => Find(units == UnitSystem.Metric ? "A3" : "11 x 17 in")!;

    /// <summary>ISO 216, or the sizes of ASME Y14.1 (F2), smallest first: what is offered where a wished paper is too small.</summary>
    public static IReadOnlyList<PaperSize> For(UnitSystem units) => units == UnitSystem.Metric
        ? Series("A4", "A3", "A2", "A1", "A0")
        : Series("letter", "11 x 17 in", "17 x 22 in", "22 x 34 in", "34 x 44 in");

    /// <summary>A size by the name that a <c>sheet</c> statement gives; null when unknown.</summary>
    public static PaperSize? Find(string name) => Paper.Find(name) is { } paper ? new(paper.Name, paper.Width, paper.Height) : null;

    /// <summary>In mm².</summary>
    public double Area => Width * Height;

    /// <summary>For file names: <c>letter</c>, <c>a4</c>.</summary>
    public string ShortName => (Paper.Find(Name) is { OtherNames: [var other, ..] } ? other : Name)
        .Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();

    private static PaperSize[] Series(params IReadOnlyList<string> names) => [.. names.Select(n => Find(n)!)];
}
