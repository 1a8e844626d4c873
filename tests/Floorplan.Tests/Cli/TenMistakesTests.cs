using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>
/// Ten slips that a builder makes in the poultry template. Each is told first and told once: no other error or warning,
/// at the place of the slip, with the words that help to mend it.
/// </summary>
public class TenMistakesTests
{
    private static readonly string Template = File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"));

    /// <summary>What is written, the slip instead of it, the code, the text that is underlined, words of the mend.</summary>
    public static TheoryData<string, string, string, string, string> Slips => new()
    {
        { "60 in x 24 in x 36 in", "60 in x 24 kg x 36 in", "wrong-unit", "24 kg", "mm, cm, m, in or ft" },
        { "west of scald gap 4 in", "west of scalt gap 4 in", "unknown-name", "scalt", "did you mean `scald`?" },
        { "station cones", "statoin cones", "unknown-statement", "statoin", "did you mean `station`?" },
        {
            "station chill \"Chill tank\" in evis", "station chill \"Chill tank\"", "in-no-room", "station chill \"Chill tank\"",
            "add `in` and the name of a room" },
        { "56 in x 26 in", "5'14\" x 26 in", "inches-over-foot", "14\" x 26", "write `6'-2\"`" },
        { "plucker -> h1 -> table ", "plucker -> h1 -> tabel ", "unknown-stop", "tabel", "did you mean `table`?" },
        {
            "against south wall, 34 in from west", "against south wall, 34 ft from west", "outside-shell", "station chill",
            "move it in by 14'-9 1/8\"" },
        { "east of s3 gap 4 in", "east of s3 gap -4 in", "overlap", "station pack", "move one of them by 4\"" },
        {
            "pack -> d4 -> rack -> d5 -> outside                    by trolley 22 in wide",
            "pack -> h1 -> crates -> d1 -> outside   by hand", "product-goes-back", "pack -> h1 -> crates",
            "before the product leaves Kill and pluck" },
        {
            "36 in x 78 in, swings out, closes itself, opens from inside", "36 in x 78 in, swings out, closes itself", "exit-locks-in",
            "door  d5", "write `opens from inside` on d5" },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_first_and_once_and_says_how_to_mend_it(
        string written, string slip, string code, string underlined, string mend)
    {
        string text = Spoilt(written, slip);
        var run = CliRun.WithInput(text, "check", "-");
        string[] lines = run.Out.Split('\n');

        bool isError = lines[0].Contains(": error: ", StringComparison.Ordinal);
        Assert.Equal(isError ? 1 : 0, run.Exit);
        Assert.Contains(code + "]", lines[0]);
        Assert.StartsWith(PlaceOf(text, underlined), lines[0]);
        Assert.Contains(mend, lines.First(l => l.StartsWith("  mend: ", StringComparison.Ordinal)));
        Assert.Single(lines, l => l.Contains(": error: ", StringComparison.Ordinal) || l.Contains(": warning: ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_template_itself_has_neither_errors_nor_warnings()
        => Assert.DoesNotMatch(": (error|warning): ", CliRun.WithInput(Template, "check", "-").Out);

    private static string Spoilt(string written, string slip)
    {
        int at = Template.IndexOf(written, StringComparison.Ordinal);
        Assert.True(at >= 0, $"the template no longer holds: {written}");
        return Template[..at] + slip + Template[(at + written.Length)..];
    }

    private static string PlaceOf(string text, string underlined)
    {
        int at = text.IndexOf(underlined, StringComparison.Ordinal);
        Assert.True(at >= 0, underlined);
        int line = text[..at].Count(c => c == '\n') + 1;
        return $"stdin:{line}:{at - text.LastIndexOf('\n', at)}: ";
    }
}
