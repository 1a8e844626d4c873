using Floorplan.Cli.Output.Patches;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The difference of two texts as a patch.</summary>
public class UnifiedPatchTests
{
    /// <summary>The example is worked by GNU diff 3.8: <c>diff -u</c> of the two texts.</summary>
    [Fact]
    public void A_patch_has_a_hunk_for_changes_that_lie_apart()
    {
        string before = string.Concat(Enumerable.Range(1, 20).Select(i => $"{i}\n"));
        string after = before.Replace("2\n3\n", "2\nx\n", StringComparison.Ordinal)[..^3] + "20";
        Assert.Equal(
            """
            --- a
            +++ a
            @@ -1,6 +1,6 @@
             1
             2
            -3
            +x
             4
             5
             6
            @@ -17,4 +17,4 @@
             17
             18
             19
            -20
            +20
            \ No newline at end of file

            """.ReplaceLineEndings("\n"),
            UnifiedPatch.Of("a", before, after));
        Assert.Equal("", UnifiedPatch.Of("a", before, before));
        Assert.Equal("--- a\n+++ a\n@@ -0,0 +1,1 @@\n+x\n", UnifiedPatch.Of("a", "", "x\n"));
    }
}
