using Floorplan.Tests.Cli;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The native program does what the built one does, to the byte.</summary>
public class PublishedProgramTests
{
    public static TheoryData<string> Templates => [.. Plans.Templates.Select(t => Path.GetFileName(t))];

    /// <summary>Command lines that between them reach every command and every kind of output; two files stand in the folder.</summary>
    public static TheoryData<string> Commands =>
    [
        "", "--help", "--version", "rules", "new", "new poultry-40ft a.unit", "new no-such-template b.unit",
        "check good.unit bad.unit", "check broken.unit", "check good.unit --output json", "check bad.unit --output sarif",
        "check bad.unit --output markdown", "check broken.unit --output json", "check bad.unit --mend", "check -", "check missing.unit",
        "check good.unit --output nonsense", "explain overlap", "explain no-such-rule", "format bad.unit --stdout", "format broken.unit",
        "compare good.unit bad.unit", "compare good.unit bad.unit --output json", "draw bad.unit --since good.unit --out d",
        "day good.unit", "day fish-20ft.unit", "day fish-20ft.unit --output json",
        "day fish-20ft.unit --vary crew.filleting=1..3 --vary bench.waits=1..2", "day fish-20ft.unit --vary nothing=1..2",
        "draw good.unit --sheets 1,99", "draw bad.unit --format dxf,png --dpi 60 --sheets 2", "[suggest:10] explain ov",
    ];

    /// <summary>SVG, DXF, CSV, HTML, PDF and PNG: both programs use one build of Skia, so pages and pictures are the same too.</summary>
    [SkippableTheory]
    [MemberData(nameof(Templates))]
    public void It_draws_every_template_in_every_format(string template)
        => Same(Plans.Good, "draw", template, "--format", "svg,pdf,png,dxf", "--out", "d");

    [SkippableTheory]
    [MemberData(nameof(Commands))]
    public void It_answers_every_command(string line)
        => Same(Plans.Overlapping, line.Split(' ', line.StartsWith('[') ? 2 : int.MaxValue, StringSplitOptions.RemoveEmptyEntries));

    private static void Same(string input, params string[] arguments)
    {
        var published = TestedProgram.Published;
        using var native = Folder();
        using var built = Folder();
        var run = published.Run(native.Path, input, arguments);

        Assert.Equal(TestedProgram.Built.Run(built.Path, input, arguments), run);
        Assert.Equal(built.Files, native.Files);
        Assert.DoesNotContain(built.Files, f => !File.ReadAllBytes(built.At(f)).SequenceEqual(File.ReadAllBytes(native.At(f))));
    }

    private static TemporaryFolder Folder()
    {
        var folder = new TemporaryFolder();
        Plans.Templates.ToList().ForEach(t => File.Copy(t, folder.At(Path.GetFileName(t))));
        folder.Write("good.unit", Plans.Good);
        folder.Write("bad.unit", Plans.Overlapping);
        folder.Write("broken.unit", Plans.Broken);
        return folder;
    }
}
