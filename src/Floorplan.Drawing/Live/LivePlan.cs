using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Sheets.Keeping;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Live;

/// <summary>
/// A plan that is edited: each text gives what a fresh run on it gives, but what the edit does not touch is taken over from the text
/// before. Parsing and binding are done afresh, since they take about a millisecond each; each layer keeps what it works out itself. For
/// one thread.
/// </summary>
/// <param name="path">Name of the file, as title blocks and places say it.</param>
/// <param name="files">What the plan's <c>kinds from</c> statements may read; read again at each edit.</param>
public sealed class LivePlan(string path, IPlanFiles files)
{
    private readonly KeptSheets sheets = new();

    /// <summary>Of the last text without errors, so that half a word while typing does not lose all.</summary>
    private PlanFacts? last;

    /// <summary>Of the text as it is; null when it has errors.</summary>
    public PlanFacts? Facts { get; private set; }

    public Plan? Plan => Facts?.Plan;

    public IReadOnlyList<Diagnostic> Diagnostics { get; private set; } = [];

    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>How much of the drawing was taken over so far.</summary>
    public KeptSheets Sheets => sheets;

    /// <summary>Takes the next text, up to its findings.</summary>
    public void Edit(string text)
    {
        var bound = PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, path)), files);
        Diagnostics = bound.Diagnostics;
        if (bound is not { HasErrors: false, Plan: { } plan })
        {
            (Facts, Findings) = (null, []);
            return;
        }

        last = Facts = new PlanFacts(plan, last);
        Findings = Checker.Check(Facts);
    }

    /// <summary>
    /// The pages of one sheet of the text as it is, or why it is not drawn; neither when the text has errors or there is no such sheet.
    /// </summary>
    public (IReadOnlyList<SheetScene> Pages, NotDrawn? Reason) Sheet(int number)
    {
        if (Facts is null)
        {
            return ([], null);
        }

        var set = SheetSet.Make(new SheetRequest(Facts, Findings), [number], sheets);
        return (set.Sheets, set.NotDrawn.FirstOrDefault());
    }
}
