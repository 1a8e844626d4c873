using Floorplan.Model;
using Floorplan.Model.Limits;

namespace Floorplan.Checks.Findings;

/// <summary>Which <c>accept</c> statement, if any, covers a finding.</summary>
internal static class Acceptances
{
    public static Acceptance? Of(Plan plan, Finding finding) => plan.Acceptances.FirstOrDefault(a => Covers(a, finding));

    /// <summary>Same rule, and the finding names every thing that the statement names.</summary>
    public static bool Covers(Acceptance acceptance, Finding finding)
        => acceptance.Rule == finding.Rule && acceptance.Things.All(t => finding.Things.Contains(t, StringComparer.Ordinal));
}
