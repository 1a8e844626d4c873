using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed class FindingBoundTests
{
    [Fact]
    public void One_rule_tells_so_many_findings_and_then_that_there_are_more()
    {
        // 60 benches in one place are 1770 pairs.
        var findings = CheckedPlan.Check(Plan(60)).Where(f => f.Rule == "overlap").ToList();

        Assert.Equal(Checker.MostOfOneRule + 1, findings.Count);
        var rest = Assert.Single(findings, f => f.Things.Count == 0);
        Assert.Equal((Severity.Note, "mend these first and check again"), (rest.Severity, rest.Mend));
    }

    [Fact]
    public void Fewer_are_all_told()
        => Assert.Equal(45, CheckedPlan.Check(Plan(10)).Count(f => f.Rule == "overlap"));

    private static string Plan(int benches) => """
        plan "Heap"
          units metric
        shell shed 12000 x 5000 x 2500
        room work "Work" clean from west to east
        door d1 work to outside, south wall, 500 from west, 900 x 2000, swings out

        """ + string.Concat(Enumerable.Range(0, benches).Select(i =>
            $"station b{i} \"Bench {i}\" in work, 1000 x 600 x 900, against north wall, {3000 + (13 * i)} from west\n"));
}
