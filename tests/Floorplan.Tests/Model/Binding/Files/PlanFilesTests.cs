using System.Diagnostics;
using System.Text;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files;
using Xunit;

namespace Floorplan.Tests.Model.Binding.Files;

public sealed class PlanFilesTests : IDisposable
{
    private static readonly SourceText Plan = new("", "my.unit");

    private readonly string top = Directory.CreateTempSubdirectory("plan-files").FullName;
    private readonly string folder;

    public PlanFilesTests()
    {
        folder = Directory.CreateDirectory(Path.Combine(top, "unit")).FullName;
        File.WriteAllText(Path.Combine(top, "secret.unit"), "secret");
        File.WriteAllText(Path.Combine(folder, "benches.unit"), "kind bench");
        Directory.CreateDirectory(Path.Combine(folder, "kinds"));
        File.WriteAllText(Path.Combine(folder, "kinds", "sinks.unit"), "kind sink");
    }

    public void Dispose() => Directory.Delete(top, recursive: true);

    [Theory]
    [InlineData("benches", "kind bench")]
    [InlineData("benches.unit", "kind bench")]
    [InlineData("kinds/sinks", "kind sink")]
    public void A_file_in_the_folder_tree_is_read(string name, string text)
        => Assert.Equal(text, new PlanFiles(folder).Read(Plan, name).Source!.Content);

    [Fact]
    public void A_used_file_names_others_from_its_own_folder()
    {
        File.WriteAllText(Path.Combine(folder, "kinds", "taps.unit"), "kind tap");
        var files = new PlanFiles(folder);
        var sinks = files.Read(Plan, "kinds/sinks").Source!;
        Assert.Equal("kind tap", files.Read(sinks, "taps").Source!.Content);
    }

    [Theory]
    [InlineData("../secret")]
    [InlineData("kinds/../../secret")]
    [InlineData("./benches")]
    [InlineData("/etc/passwd")]
    [InlineData("~/benches")]
    [InlineData("..\\secret")]
    [InlineData("C:/secret")]
    [InlineData("benches\0.unit")]
    [InlineData("")]
    [InlineData("kinds//sinks")]
    public void A_name_that_leaves_the_folder_tree_is_refused(string name)
    {
        var file = new PlanFiles(folder).Read(Plan, name);
        Assert.Null(file.Source);
        Assert.NotEmpty(file.Problem);
        Assert.NotNull(file.Help);
    }

    [Fact]
    public void A_missing_file_gives_near_names()
    {
        var file = new PlanFiles(folder).Read(Plan, "bences");
        Assert.Equal("there is no file `bences.unit` in the plan's folder", file.Problem);
        Assert.Equal("did you mean `benches.unit`?", file.Help);
    }

    [Fact]
    public void A_folder_is_not_a_file()
    {
        Directory.CreateDirectory(Path.Combine(folder, "odd.unit"));
        Assert.Equal("`odd.unit` is a folder", new PlanFiles(folder).Read(Plan, "odd").Problem);
    }

    [Fact]
    public void A_large_file_is_refused()
    {
        File.WriteAllText(Path.Combine(folder, "large.unit"), new string('#', (PlanFiles.LargestMegabytes << 20) + 1));
        Assert.Equal(
            "`large.unit`: more than 1 MB; a plan is far smaller, so this is some other file",
            new PlanFiles(folder).Read(Plan, "large").Problem);
    }

    /// <summary>Letters of another encoding would be lost without a word.</summary>
    [Fact]
    public void A_file_in_another_encoding_is_refused_with_the_place()
    {
        File.WriteAllBytes(Path.Combine(folder, "old.unit"), [.. "kind b\r  owner "u8, 0xE9]);
        byte[] words = [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("kind")];
        File.WriteAllBytes(Path.Combine(folder, "wide.unit"), words);
        var (old, wide) = (new PlanFiles(folder).Read(Plan, "old"), new PlanFiles(folder).Read(Plan, "wide"));
        Assert.Null(old.Source);
        Assert.Equal("`old.unit`: line 2 is not UTF-8 text (byte 0xE9); save the file as UTF-8", old.Problem);
        Assert.Null(wide.Source);
        Assert.Equal("`wide.unit`: this is UTF-16 text; save it as UTF-8", wide.Problem);
    }

    [SkippableTheory]
    [InlineData("link.unit", "link")]
    [InlineData("out", "out/secret")]
    public void Links_are_not_followed(string link, string name)
    {
        Skip.If(OperatingSystem.IsWindows(), "links need rights there");
        File.CreateSymbolicLink(Path.Combine(folder, link), link == "out" ? top : Path.Combine(top, "secret.unit"));
        var file = new PlanFiles(folder).Read(Plan, name);
        Assert.Null(file.Source);
        Assert.EndsWith("is a link, and links are not followed", file.Problem, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_pipe_is_never_waited_for()
    {
        Skip.If(OperatingSystem.IsWindows(), "no named pipes in folders there");
        string pipe = Path.Combine(folder, "pipe.unit");
        using var make = Process.Start("mkfifo", pipe);
        await make.WaitForExitAsync();
        var read = Task.Run(() => new PlanFiles(folder).Read(Plan, "pipe"));
        Assert.Same(read, await Task.WhenAny(read, Task.Delay(TimeSpan.FromSeconds(5))));
        Assert.Null((await read).Source);
        Assert.Equal("`pipe.unit`: this is a pipe or a device, not a plain file", (await read).Problem);
    }
}
