using Floorplan.Checks.Findings;

namespace Floorplan.Cli.Output.Reports;

/// <summary>Findings that came and went between two revisions; accepted ones do not count.</summary>
/// <param name="New">Of the new plan, and not of the old one.</param>
/// <param name="Gone">Of the old plan, and not of the new one.</param>
internal sealed record ComparedFindings(IReadOnlyList<Finding> New, IReadOnlyList<Finding> Gone)
{
    public static ComparedFindings Of(IReadOnlyList<Finding> was, IReadOnlyList<Finding> now)
    {
        var before = was.Where(f => f.AcceptedBy is null).ToLookup(f => (f.Rule, f.Message));
        var after = now.Where(f => f.AcceptedBy is null).ToLookup(f => (f.Rule, f.Message));
        return new ComparedFindings(
            [.. now.Where(f => f.AcceptedBy is null && !before.Contains((f.Rule, f.Message)))],
            [.. was.Where(f => f.AcceptedBy is null && !after.Contains((f.Rule, f.Message)))]);
    }
}
