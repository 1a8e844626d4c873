using System.Diagnostics;
using System.Text;
using Floorplan.Cli.Input;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>Whatever a file name leads to, the answer is a sentence or a plan.</summary>
public class InputTests
{
    [Fact]
    public void A_folder_is_not_a_plan()
    {
        using var folder = new TemporaryFolder();
        Refused(folder.Path, "this is a folder");
    }

    [Fact]
    public void A_missing_file_offers_near_names()
    {
        using var folder = new TemporaryFolder();
        folder.Write("tarn-foot.unit", Plans.Good);
        Refused(folder.At("tarnfoot.unit"), "did you mean `tarn-foot.unit`?");
    }

    [Fact]
    public void The_old_ending_is_not_read()
    {
        using var folder = new TemporaryFolder();
        Refused(folder.Write("shop.plan", Encoding.UTF8.GetBytes(Plans.Good)), "unit files end in .unit; name it shop.unit");
    }

    [Fact]
    public void A_name_that_no_file_can_have_is_refused() => Refused("a\0b.unit", "not a file name");

    [Fact]
    public void Bytes_that_are_not_utf8_are_placed()
    {
        using var folder = new TemporaryFolder();
        Refused(folder.Write("a.unit", [.. "plan\n"u8, 0xE9, (byte)'\n']), "line 2 is not UTF-8 text (byte 0xE9)");
        Refused(folder.Write("b.unit", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("plan")).ToArray()), "UTF-16");
        Refused(folder.Write("c.unit", [.. "plan\n"u8, 0, 1, 2, 0xE9]), "this is not a text file");
    }

    [Fact]
    public void Nothing_at_all_is_told_apart_from_a_plan_without_a_shell()
    {
        foreach (string nothing in new[] { "", "\n\n", "# later\n" })
        {
            var run = CliRun.WithInput(nothing, "check", "-");
            Assert.Equal(1, run.Exit);
            Assert.StartsWith("stdin:1:1: error: there is nothing in this plan yet [empty-plan]\n", run.Out);
        }
    }

    [Fact]
    public void One_file_that_cannot_be_read_does_not_hide_what_is_found_in_the_others()
    {
        using var folder = new TemporaryFolder();
        folder.Write("good.unit", Plans.Good);
        folder.Write("bad.unit", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "check", "good.unit", "not-there.unit", "bad.unit");
        Assert.Equal(2, run.Exit);
        Assert.Contains("\nbad.unit: 1 error; ", run.Out);
        Assert.Contains("3 files: 1 error", run.Out);
        Assert.Contains("; 1 not read\n", run.Out);
        Assert.Equal("floorplan: not-there.unit: there is no such file\n", run.Error);
    }

    [Fact]
    public void A_file_far_too_large_is_refused()
    {
        using var folder = new TemporaryFolder();
        Refused(folder.Write("a.unit", new byte[(PlanFileReader.MostMegabytes << 20) + 1]), "more than 8 MB");
    }

    [Fact]
    public void A_byte_order_mark_and_windows_line_ends_change_nothing()
    {
        string windows = "\uFEFF" + Plans.Good.Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.Equal(CliRun.WithInput(Plans.Good, "check", "-"), CliRun.WithInput(windows, "check", "-"));
    }

    [Fact]
    public void Parts_are_read_from_the_folder_of_the_plan_and_not_from_above_it()
    {
        using var folder = new TemporaryFolder();
        folder.Write("secret.unit", "kind hidden\n  size 100 x 100 x 100\n");
        Directory.CreateDirectory(folder.At("plans"));
        folder.Write("plans/unit.unit", Plans.Good + "\nuse ../secret.unit\n");
        var run = CliRun.In(folder.Path, "", "check", "plans/unit.unit");
        Assert.Equal(1, run.Exit);
        Assert.DoesNotContain("hidden", run.Out);
        Assert.Matches(@"(?m)^plans/unit\.unit:\d+:\d+: error: ", run.Out);
    }

    /// <summary>Reading a pipe that nobody writes to would wait for ever.</summary>
    [SkippableFact]
    public void A_pipe_or_a_device_is_refused_and_not_waited_for()
    {
        Skip.If(OperatingSystem.IsWindows(), "no named pipes in folders there");
        using var folder = new TemporaryFolder();
        using var make = Process.Start("mkfifo", folder.At("pipe.unit"));
        make.WaitForExit();
        Refused(folder.At("pipe.unit"), "this is a pipe or a device, not a plain file");
        Refused("/dev/null", "this is a pipe or a device, not a plain file");
    }

    [Theory]
    [InlineData("\r")]
    [InlineData("\r\n")]
    public void Line_ends_of_any_kind_are_lines(string end)
    {
        string plan = Plans.Overlapping + "# the end\n";
        string other = plan.Replace("\n", end, StringComparison.Ordinal);
        Assert.Equal(CliRun.WithInput(plan, "check", "-"), CliRun.WithInput(other, "check", "-"));
        using var folder = new TemporaryFolder();
        string file = folder.Write("a.unit", [.. Encoding.UTF8.GetBytes("plan" + end + "  owner "), 0xE9]);
        Refused(file, "line 2 is not UTF-8 text (byte 0xE9)");
    }

    private static void Refused(string file, string sentence)
    {
        var run = CliRun.Of("check", file);
        Assert.Equal(2, run.Exit);
        Assert.Contains(sentence, run.Error);
        Assert.Equal("", run.Out);
    }
}
