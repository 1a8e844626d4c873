using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;

namespace Floorplan.Drawing.Frames;

/// <summary>
/// All that one sheet shows, before paper and scale are chosen. Texts may be hostile; they are cleaned, wrapped and shortened here.
/// </summary>
public sealed record SheetContent
{
    /// <summary>File name without extension, such as <c>1-general-arrangement</c>.</summary>
    public required string Name { get; init; }

    /// <summary>For people who cannot see it.</summary>
    public required string Description { get; init; }

    public required TitleBlockFields TitleBlock { get; init; }

    public required UnitSystem Units { get; init; }

    public required IReadOnlyList<ISheetView> Views { get; init; }

    public IReadOnlyList<Revision> Revisions { get; init; } = [];

    /// <summary>Only what appears on this sheet.</summary>
    public IReadOnlyList<LegendEntry> Legend { get; init; } = [];

    public IReadOnlyList<KeyTable> Tables { get; init; } = [];

    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Findings marked on this sheet, with their numbers.</summary>
    public IReadOnlyList<FindingLine> Findings { get; init; } = [];

    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Degrees from up the sheet to true north, clockwise; null when not said (plan north is drawn).</summary>
    public double? TrueNorth { get; init; }

    /// <summary>Names beside the north mark: which side the doors and the hitch are on.</summary>
    public Side? DoorEnd { get; init; }

    public Side? HitchEnd { get; init; }

    public SheetWish? Wish { get; init; }

    /// <summary>What it is drawn on: as the plan says, or else the usual paper.</summary>
    public PaperSize Paper => Wish?.Paper is { } name && PaperSize.Find(name) is { } wished ? wished : PaperSize.Usual(Units);

    /// <summary>The denominator of all plan views of the set; null where the sheet finds its own.</summary>
    public double? PlanScale { get; init; }

    /// <summary>Where the plan says something about this sheet, or begins.</summary>
    public required SourceSpan Place { get; init; }
}

/// <param name="Draw">Draws a small sample into the box.</param>
public sealed record LegendEntry(string Text, Action<SceneBuilder, PaperBox> Draw);

/// <param name="Columns">Heads; the first column is the mark or number.</param>
/// <param name="Rows">As many cells as there are heads; or one cell, which heads the rows below it.</param>
public sealed record KeyTable(string Title, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<Cell>> Rows);

/// <param name="Number">As marked on the plan.</param>
/// <param name="Severity">The word: <c>error</c>, <c>warning</c>, <c>note</c>, <c>accepted</c>.</param>
public sealed record FindingLine(int Number, string Severity, string Text);
