using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Scene;

/// <summary>One finished sheet, ready for a writer. Items are in painting order.</summary>
/// <param name="Name">File name without extension, such as <c>1-general-arrangement</c>.</param>
/// <param name="Description">For people who cannot see it: what the sheet shows, in a sentence.</param>
/// <param name="Denominator">The scale of its views is 1 to this: a paper millimetre is so many millimetres of the thing drawn.</param>
public sealed record SheetScene(
    string Name, string Title, string Description, double WidthMm, double HeightMm, IReadOnlyList<SceneItem> Items, double Denominator = 1)
{
    /// <summary>The sheet's number in the set.</summary>
    public int Sheet { get; init; } = 1;

    /// <summary>Which page of the sheet, from 1; those after the first are continuation sheets.</summary>
    public int Page { get; init; } = 1;

    /// <summary>How many pages the sheet has.</summary>
    public int Pages { get; init; } = 1;

    /// <summary><c>6</c>, and on continuation sheets <c>6.2</c>.</summary>
    public string Number => PageNumber.Of(Sheet, Page);

    /// <summary>The name of its paper; empty when it is a picture.</summary>
    public string Paper { get; init; } = "";

    /// <summary>The drawing space inside its frame; nothing when it has none.</summary>
    public PaperBox Inside { get; init; } = PaperBox.Nothing;

    /// <summary>The worked-out values that its tables and labels print.</summary>
    public IReadOnlyList<Figure> Figures { get; init; } = [];

    /// <summary>
    /// Where the datum of its first view falls on paper: of a plan, the steel datum, which need not lie on the part that is shown. Null
    /// when nothing on the sheet has one.
    /// </summary>
    public PaperPoint? Datum { get; init; }
}
