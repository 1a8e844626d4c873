using System.Diagnostics;
using System.Runtime.Versioning;
using System.Text;
using Floorplan.Model.Binding.Files.Disk;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>
/// A plan's own file stays the same file when it is written back. <see cref="Outside.PublishedRewriteTests"/> sees that of the published
/// program too; <see cref="PlanRewriteTests"/> tries what takes an edit at the right moment.
/// </summary>
public class RewriteTests
{
    private static string Mendable
        => Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal);

    /// <summary>What <c>format</c> makes <see cref="Plans.Good"/> of.</summary>
    private static string Untidy => Plans.Good.Replace("  size", "   size", StringComparison.Ordinal);

    private protected virtual CliRun Run(string folder, string input, params string[] arguments) => CliRun.In(folder, input, arguments);

    [SkippableTheory]
    [InlineData("check --mend unit.unit")]
    [InlineData("format unit.unit")]
    public void A_write_protected_file_is_left_as_it_is(string command)
    {
        using var folder = new TemporaryFolder();
        string plan = Mendable.Replace("  size", "   size", StringComparison.Ordinal);
        string file = folder.Write("unit.unit", plan);
        File.SetAttributes(file, FileAttributes.ReadOnly);
        var run = Run(folder.Path, "", command.Split(' '));
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
        string file = folder.Write("unit.unit", Untidy);
        folder.Link("unit.unit", "twin.unit");
        var mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead;
        File.SetUnixFileMode(file, mode);
        var before = FileFacts.Of(file)!;
        Assert.Equal(2u, before.Names);
        Assert.Equal(new CliRun(0, "unit.unit: formatted\n", ""), Run(folder.Path, "", "format", "unit.unit"));
        Assert.Equal(Plans.Good, File.ReadAllText(folder.At("twin.unit")));
        Assert.Equal(before, FileFacts.Of(file));
        Assert.Equal(mode, File.GetUnixFileMode(file));
        Assert.Equal(["twin.unit", "unit.unit"], folder.Files);
    }

    [SkippableFact]
    public void A_link_keeps_pointing_at_the_file()
    {
        Skip.If(OperatingSystem.IsWindows(), "links need rights there");
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Untidy);
        File.CreateSymbolicLink(folder.At("link.unit"), "unit.unit");
        Assert.Equal(0, Run(folder.Path, "", "format", "link.unit").Exit);
        Assert.Equal("unit.unit", new FileInfo(folder.At("link.unit")).LinkTarget);
        Assert.Equal(Plans.Good, File.ReadAllText(folder.At("unit.unit")));
    }

    /// <summary>Only a superuser can give a file away, so only there is this seen.</summary>
    [SkippableFact]
    public void The_owner_of_a_single_file_stays()
    {
        Skip.If(OperatingSystem.IsWindows() || Environment.UserName != "root", "needs the right to give files away");
        using var folder = new TemporaryFolder();
        string file = folder.Write("unit.unit", Untidy);
        Assert.True(FileFacts.TryGive(file, 12345, 23456));
        Assert.Equal(0, Run(folder.Path, "", "format", "unit.unit").Exit);
        Assert.Equal(Plans.Good, File.ReadAllText(file));
        Assert.Equal((12345u, 23456u), (FileFacts.Of(file)!.Owner, FileFacts.Of(file)!.Group));
    }

    [SkippableTheory]
    [InlineData("\r\n", "\uFEFF")]
    [InlineData("\r", "")]
    public void Line_ends_and_byte_order_mark_stay(string end, string mark)
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", mark + Mendable.Replace("\n", end, StringComparison.Ordinal));
        Assert.Contains("mended [exit-locks-in]", Run(folder.Path, "", "check", "--mend", "unit.unit").Error);
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
        var dry = Run(folder.Path, "", "check", "--mend", "--dry-run", "unit.unit");
        Assert.Equal(text, Encoding.UTF8.GetString(File.ReadAllBytes(folder.At("unit.unit"))));
        Assert.StartsWith("--- unit.unit\n+++ unit.unit\n@@ -", dry.Out);
        Assert.Contains("would mend [exit-locks-in]", dry.Error);
        Assert.Equal(Run(folder.Path, "", "check", "unit.unit").Exit, dry.Exit);
        Run(folder.Path, "", "check", "--mend", "other.unit");

        Skip.If(OperatingSystem.IsWindows() || !File.Exists("/usr/bin/git"), "needs git");
        folder.Write("the.patch", dry.Out);
        using var apply = Process.Start(new ProcessStartInfo("git", "apply -p0 the.patch") { WorkingDirectory = folder.Path })!;
        apply.WaitForExit();
        Assert.Equal(0, apply.ExitCode);
        Assert.Equal(File.ReadAllBytes(folder.At("other.unit")), File.ReadAllBytes(folder.At("unit.unit")));
    }

    [SkippableFact]
    public void A_dry_run_goes_with_mend_alone()
    {
        Assert.Contains("--dry-run goes with --mend", Run(Path.GetTempPath(), Plans.Good, "check", "--dry-run", "-").Error);
        var run = Run(Path.GetTempPath(), Plans.Good, "check", "--mend", "--dry-run", "--output", "json", "-");
        Assert.Equal(2, run.Exit);
        Assert.Contains("does not go with --output", run.Error);
        Assert.Equal("", Run(Path.GetTempPath(), Plans.Good, "check", "--mend", "--dry-run", "-").Out);
    }
}
