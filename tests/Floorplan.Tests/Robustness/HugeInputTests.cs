using Floorplan.Tests.Cli;
using Xunit;

namespace Floorplan.Tests.Robustness;

/// <summary>Inputs made to be slow or deep end in findings, and soon.</summary>
public class HugeInputTests
{
    /// <summary>
    /// Ten times what the slowest of these takes, built for debugging on a busy machine: only a hang takes longer. Speed is measured by
    /// the benchmarks.
    /// </summary>
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(2);

    private const string Head = "plan \"x\"\nshell shed 20000 x 10000 x 3000\nroom a \"A\" clean from west to east\n";

    private static readonly Dictionary<string, Func<string>> Texts = new()
    {
        ["one line of a million characters"] = () => Head + "station " + new string('x', 1_000_000),
        ["a million quotes"] = () => new string('"', 1_000_000),
        ["ten thousand levels of indentation"] = () => Head + Lines(10_000, n => new string(' ', n % 500) + "size 1"),
        ["a hundred thousand unknown statements"] = () => Lines(100_000, n => $"wrod{n} x y z"),
        ["a hundred thousand details"] = () => Head + "station s \"S\" in a\n" + Lines(100_000, n => $"  size {n} x 2 x 3"),
        ["one name ten thousand times"] = () => Head + Lines(10_000, _ => "station s \"S\" in a, 100 x 100 x 100, at 0, 0"),
        ["a circle of five thousand places"] = ()
            => Head + Lines(
                5_000, n => $"station s{n} \"S\" in a\n  size 10 x 10 x 10\n  place against south wall, east of s{(n + 1) % 5_000} gap 1"),
        ["a chain of five thousand places"] = ()
            => Head + "station s0 \"S\" in a\n  size 1 x 1 x 1\n  place at 0, 0\n"
                + Lines(5_000, n => $"station s{n + 1} \"S\" in a\n  size 1 x 1 x 1\n  place against south wall, east of s{n} gap 1"),
        ["three hundred rooms in one"] = () => Head + Lines(300, n => $"room r{n} \"R\" clean area 500 x 500, in a, at {n}, {n}"),
        ["a hundred rooms in each other"] = ()
            => "plan \"x\"\nshell shed 40000 x 40000 x 2700\nroom z \"Z\" clean from west to east\n"
                + Lines(100, n => $"room r{n} \"R\" clean area {Side(n)} x {Side(n)}, in {(n == 0 ? "z" : $"r{n - 1}")}, at 85, 85"),
        ["a shed with four thousand corners"] = ()
            => "plan \"x\"\nshell shed corners " + string.Join(", ", Enumerable.Range(0, 4_000).Select(n => $"{n * 10} {n % 7 * 100}")),
        ["a kind of itself"] = () => Head + "kind k like k\nstation s like k in a\n",
        ["a flow of twenty thousand stops"] = ()
            => Head + "station s \"S\" in a\n  size 100 x 100 x 100\n  place at 100, 100\nflow product\n  s" + Repeat(20_000, " -> s"),
        ["a flow there and back ten thousand times"] = ()
            => Head + "station s \"S\" in a\n  size 100 x 100 x 100\n  place at 100, 100\nstation t \"T\" in a\n  size 100 x 100 x 100\n "
                + " place at 9000, 5000\nflow product\n  s" + Repeat(10_000, " -> t -> s"),
        ["a trolley as thin as paper, round a door at a corner"] = ()
            => "plan \"x\"\nshell shed 8000 x 4000 x 2600\nroom a \"A\" dry from west to east\n"
            + "door d1 a to outside, west wall, 50 from south, 640 x 2100, swings out\ndoor d2 a to outside, north wall, 50 from east, "
            + "640 x 2100, swings out\n"
            + "station b \"B\" in a\n  size 7060 x 3060 x 2000\n  place against west wall, against north wall\nflow product\n  outside "
            + "-> d1 -> d2 -> outside  by trolley 1 wide",
        ["digits without end"] = () => Head + "station s \"S\" in a\n  size " + new string('9', 100_000),
        ["commas without end"] = () => Head + "station s" + new string(',', 200_000),
    };

    public static TheoryData<string> Inputs => [.. Texts.Keys];

    [Theory]
    [MemberData(nameof(Inputs))]
    public async Task It_ends_in_findings_and_soon(string what)
    {
        string text = Texts[what]();
        var run = await Task.Run(() => CliRun.WithInput(text, "check", "-", "--output", "json")).WaitAsync(Hang);
        Assert.InRange(run.Exit, 0, 1);
        Assert.Equal("", run.Error);
        Assert.InRange(run.Out.Length, 1, 64 << 20);
    }

    [Theory]
    [InlineData("a flow of twenty thousand stops")]
    [InlineData("a flow there and back ten thousand times")]
    [InlineData("a chain of five thousand places")]
    [InlineData("three hundred rooms in one")]
    [InlineData("a hundred rooms in each other")]
    [InlineData("a shed with four thousand corners")]
    public async Task It_is_drawn_or_refused_and_soon(string what)
    {
        using var folder = new TemporaryFolder();
        string text = Texts[what]();
        var run = await Task.Run(() => CliRun.In(folder.Path, text, "draw", "-")).WaitAsync(Hang);
        Assert.InRange(run.Exit, 0, 1);
        Assert.All(folder.Files, file => Assert.InRange(new FileInfo(folder.At(file)).Length, 1, 64 << 20));
    }

    /// <summary>Of the room in the room before it, in mm.</summary>
    private static int Side(int number) => 37_000 - (number * 180);

    private static string Lines(int count, Func<int, string> line) => string.Join('\n', Enumerable.Range(0, count).Select(line)) + "\n";

    private static string Repeat(int count, string text) => string.Concat(Enumerable.Repeat(text, count)) + "\n";
}
