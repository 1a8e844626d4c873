namespace Floorplan.Drawing.Frames;

/// <summary>The fields of ISO 7200 (F2) and what this tool always adds. Empty fields are drawn empty.</summary>
public sealed record TitleBlockFields
{
    public string Owner { get; init; } = "";

    public string Site { get; init; } = "";

    public string Number { get; init; } = "";

    public string Title { get; init; } = "";

    /// <summary>What the sheet is: <c>General arrangement</c>.</summary>
    public string SheetTitle { get; init; } = "";

    public int Sheet { get; init; } = 1;

    public int Sheets { get; init; } = 1;

    /// <summary>Which page of the sheet this is, from 1.</summary>
    public int Page { get; init; } = 1;

    /// <summary>How many pages the sheet has.</summary>
    public int Pages { get; init; } = 1;

    /// <summary><c>6.2, 2 of 3; set of 9</c>.</summary>
    public string SheetNumber => Pages == 1
        ? FormattableString.Invariant($"{Sheet}; set of {Sheets}")
        : FormattableString.Invariant($"{PageNumber}, {Page} of {Pages}; set of {Sheets}");

    /// <summary><c>6</c>, and on continuation sheets <c>6.2</c>.</summary>
    public string PageNumber => Scene.PageNumber.Of(Sheet, Page);

    /// <summary>Why nothing may be built from it yet; empty when nothing stands against it.</summary>
    public string Stop { get; init; } = "";

    /// <summary>From the last revision; never the clock, so that two runs are the same.</summary>
    public string Date { get; init; } = "";

    public string DrawnBy { get; init; } = "";

    public string CheckedBy { get; init; } = "";

    public string Revision { get; init; } = "";

    public string DocumentType { get; init; } = "";

    public string SourceName { get; init; } = "";

    /// <summary>Short hash of the source text.</summary>
    public string SourceHash { get; init; } = "";

    public string Tool { get; init; } = "";

    /// <summary>Such as <c>0 errors, 2 warnings, 1 accepted</c>.</summary>
    public string Checks { get; init; } = "";
}
