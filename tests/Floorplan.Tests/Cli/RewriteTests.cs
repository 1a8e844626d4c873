using System.Diagnostics;
using System.Runtime.Versioning;
using System.Text;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Patches;
using Floorplan.Model.Binding.Files.Disk;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>A plan's own file is written back only over what was read, and stays the same file.</summary>
public class RewriteTests
{
    private static string Mendable
        => Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal);

    [Fact]
    public void An_edit_saved_in_between_is_not_overwritten()
    {
        using var folder = new TemporaryFolder();
        string file = folder.Write("unit.unit", Plans.Good);
        var read = Read(folder, file);
        folder.Write("unit.unit", Plans.Good + "# an edit\n");
        Assert.Contains("another program changed it after it was read", PlanRewrite.Replace(read, "new text"));
        Assert.Equal(Plans.Good + "# an edit\n", File.ReadAllText(file));
        Assert.Equal(["unit.unit"], folder.Files);
    }

    [Theory]
    [InlineData("check --mend unit.unit")]
    [InlineData("format unit.unit")]
    public void A_write_protected_file_is_left_as_it_is(string command)
    {
        using var folder = new TemporaryFolder();
        string plan = Mendable.Replace("  size", "   size", StringComparison.Ordinal);
        string file = folder.Write("unit.unit", plan);
        File.SetAttributes(file, FileAttributes.ReadOnly);
        var run = CliRun.In(folder.Path, "", command.Split(' '));
        File.SetAttributes(file, FileAttributes.Normal);
        Assert.Equal(2, run.Exit);
        Assert.Contains("floorplan: unit.unit: it is write-protected, so it is left as it is\n", run.Error);
        Assert.Equal(plan, File.ReadAllText(file));
    }

    [SkippableFact]
    [UnsupportedOSPlatform("windows")]
    public void Other_names_permissions_and_owner_stay()
    {
        Skip.If(OperatingSystem.IsWindows(), "other rights there");
        using var folder = new TemporaryFolder();
        string file = folder.Write("unit.unit", "old");
        using (var link = Process.Start("ln", [file, folder.At("twin.unit")]))
        {
            link.WaitForExit();
        }

        var mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead;
        File.SetUnixFileMode(file, mode);
        var before = FileFacts.Of(file)!;
        Assert.Equal(2u, before.Names);
        Assert.Null(PlanRewrite.Replace(Read(folder, file), "new text"));
        Assert.Equal("new text", File.ReadAllText(folder.At("twin.unit")));
        Assert.Equal(before, FileFacts.Of(file));
        Assert.Equal(mode, File.GetUnixFileMode(file));
        Assert.Equal(["twin.unit", "unit.unit"], folder.Files);

        folder.Write("unit.unit", "longer than the new text");
        var stale = Read(folder, file);
        folder.Write("twin.unit", "an edit");
        Assert.Contains("another program changed it", PlanRewrite.Replace(stale, "x"));
        Assert.Equal("an edit", File.ReadAllText(file));
    }

    /// <summary>Only a superuser can give a file away, so only there is this seen.</summary>
    [SkippableFact]
    public void The_owner_of_a_single_file_stays()
    {
        Skip.If(OperatingSystem.IsWindows() || Environment.UserName != "root", "needs the right to give files away");
        using var folder = new TemporaryFolder();
        string file = folder.Write("unit.unit", "old");
        Assert.True(FileFacts.TryGive(file, 12345, 23456));
        Assert.Null(PlanRewrite.Replace(Read(folder, file), "new"));
        Assert.Equal("new", File.ReadAllText(file));
        Assert.Equal((12345u, 23456u), (FileFacts.Of(file)!.Owner, FileFacts.Of(file)!.Group));
    }

    [Theory]
    [InlineData("\r\n", "\uFEFF")]
    [InlineData("\r", "")]
    public void Line_ends_and_byte_order_mark_stay(string end, string mark)
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", mark + Mendable.Replace("\n", end, StringComparison.Ordinal));
        Assert.Contains("mended [exit-locks-in]", CliRun.In(folder.Path, "", "check", "--mend", "unit.unit").Error);
        string text = Encoding.UTF8.GetString(File.ReadAllBytes(folder.At("unit.unit")));
        Assert.StartsWith(mark + "# Trout", text, StringComparison.Ordinal);
        Assert.Contains("opens from inside", text);
        Assert.Equal(end.Length == 1 ? 0 : text.Count(c => c == '\r'), text.Count(c => c == '\n'));
        Assert.Equal(Mendable.Count(c => c == '\n'), text.Count(c => c == '\r'));
    }

    /// <summary>What <c>patch</c> makes of it is what <c>--mend</c> writes.</summary>
    [SkippableTheory]
    [InlineData("\n", "")]
    [InlineData("\r\n", "\uFEFF")]
    public void A_dry_run_prints_a_patch_that_applies_and_writes_nothing(string end, string mark)
    {
        using var folder = new TemporaryFolder();
        string text = mark + Mendable.Replace("\n", end, StringComparison.Ordinal).TrimEnd();
        folder.Write("unit.unit", text);
        folder.Write("other.unit", text);
        var dry = CliRun.In(folder.Path, "", "check", "--mend", "--dry-run", "unit.unit");
        Assert.Equal(text, Encoding.UTF8.GetString(File.ReadAllBytes(folder.At("unit.unit"))));
        Assert.StartsWith("--- unit.unit\n+++ unit.unit\n@@ -", dry.Out);
        Assert.Contains("would mend [exit-locks-in]", dry.Error);
        Assert.Equal(CliRun.In(folder.Path, "", "check", "unit.unit").Exit, dry.Exit);
        CliRun.In(folder.Path, "", "check", "--mend", "other.unit");

        Skip.If(OperatingSystem.IsWindows() || !File.Exists("/usr/bin/git"), "needs git");
        folder.Write("the.patch", dry.Out);
        using var apply = Process.Start(new ProcessStartInfo("git", "apply -p0 the.patch") { WorkingDirectory = folder.Path })!;
        apply.WaitForExit();
        Assert.Equal(0, apply.ExitCode);
        Assert.Equal(File.ReadAllBytes(folder.At("other.unit")), File.ReadAllBytes(folder.At("unit.unit")));
    }

    [Fact]
    public void A_dry_run_goes_with_mend_alone()
    {
        Assert.Contains("--dry-run goes with --mend", CliRun.WithInput(Plans.Good, "check", "--dry-run", "-").Error);
        var run = CliRun.WithInput(Plans.Good, "check", "--mend", "--dry-run", "--output", "json", "-");
        Assert.Equal(2, run.Exit);
        Assert.Contains("does not go with --output", run.Error);
        Assert.Equal("", CliRun.WithInput(Plans.Good, "check", "--mend", "--dry-run", "-").Out);
    }

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

    private static PlanText Read(TemporaryFolder folder, string file)
    {
        using var host = new Host { In = Stream.Null, Out = TextWriter.Null, Error = TextWriter.Null, Folder = folder.Path };
        return PlanFileReader.Read(file, host);
    }
}
