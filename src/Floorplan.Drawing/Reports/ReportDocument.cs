using Floorplan.Drawing.Scene;
using Floorplan.Language.Text;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Reports;

/// <summary>What a report says, before it is a page or paper. Texts may be hostile; writers clean and escape them.</summary>
/// <param name="Head">Short lines under the title: number, revision, owner.</param>
public sealed record ReportDocument(string Title, IReadOnlyList<string> Head, IReadOnlyList<ReportChapter> Chapters)
{
    /// <summary>The text of the plan, for lines that workings name.</summary>
    public SourceText? Source { get; init; }
}

/// <param name="Title">Of the chapter; its place in the bookmarks.</param>
public sealed record ReportChapter(string Title, IReadOnlyList<ReportBlock> Blocks);

public abstract record ReportBlock;

/// <summary>A heading inside a chapter.</summary>
public sealed record ReportHeading(string Text) : ReportBlock;

/// <summary>A paragraph.</summary>
/// <param name="IsCaution">Set off, because it can save somebody.</param>
public sealed record ReportText(string Text, bool IsCaution = false) : ReportBlock;

/// <summary>A table; each row as long as the heads.</summary>
public sealed record ReportTable(string Title, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows) : ReportBlock
{
    /// <summary>A column without a word in any row says nothing; tables on paper leave it out too.</summary>
    public ReportTable Filled()
    {
        int[] shown = [.. Enumerable.Range(0, Heads.Count).Where(i => Rows.Any(r => r[i].Length > 0))];
        return shown.Length == Heads.Count || shown.Length == 0
            ? this
            : this with { Heads = [.. shown.Select(i => Heads[i])], Rows = [.. Rows.Select(r => (string[])[.. shown.Select(i => r[i])])] };
    }
}

/// <summary>One figure, so that it can be followed with a pocket calculator.</summary>
public sealed record ReportWorking(Figure Figure) : ReportBlock;

/// <summary>A drawing.</summary>
public sealed record ReportPicture(SheetScene Scene) : ReportBlock;
