using System.Diagnostics;
using CsCheck;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Parsing;

/// <summary>Any file gives an answer, in bounded time.</summary>
public class BoundsTests
{
    /// <summary>Far above what these texts take on a slow machine, far below what anything worse than linear would.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public void A_huge_file_is_refused_with_a_sentence()
    {
        string sentence = "a plan has at most 200000 lines and 4 million characters";
        Assert.Equal(sentence, Assert.Single(Sample.Parse(new string('a', 4_000_001)).Diagnostics).Message);
        Assert.Equal(sentence, Assert.Single(Sample.Parse(new string('\n', 200_001)).Diagnostics).Message);
        Assert.Equal(4_000_001, Sample.Parse(new string('a', 4_000_001)).ToText().Length);
    }

    [Fact]
    public void Mistakes_are_listed_up_to_a_bound()
    {
        var told = Sample.Parse(string.Concat(Enumerable.Repeat("nonsense\n", 5000))).Diagnostics;
        Assert.Equal(501, told.Count);
        Assert.Equal("more than 500 mistakes; the rest of the file is not read", told[^1].Message);
    }

    [Fact]
    public void Warnings_never_hide_an_error()
    {
        var told = Sample.Parse(string.Concat(Enumerable.Repeat("# a\u202Eb\n", 2000)) + "statoin a in b\n").Diagnostics;
        Assert.Equal("unknown-statement", told[^1].Code);
    }

    [Theory]
    [InlineData("station a ", "1 x ", 900_000)]
    [InlineData("station a in b", ", 1 x 2 from", 300_000)]
    [InlineData("station a in b", ", in line with c", 200_000)]
    [InlineData("flow product\n  a", " -> b", 600_000)]
    [InlineData("station a in b\n", "  worker south\n", 190_000)]
    [InlineData("", "statoin x\n", 190_000)]
    [InlineData("", "    room r\n", 190_000)]
    [InlineData("plan \"", "a\u202E", 1_500_000)]
    [InlineData("limit a ", "1 ", 1_500_000)]
    [InlineData("day\n  crew a 1", ", a 1", 700_000)]
    [InlineData("", "\"", 3_000_000)]
    [InlineData("", "-", 3_000_000)]
    public void Big_hostile_files_are_read_in_bounded_time(string start, string again, int times)
    {
        string text = start + string.Concat(Enumerable.Repeat(again, times));
        var watch = Stopwatch.StartNew();
        var tree = Sample.Parse(text);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, Patience);
        Assert.Equal(text.Length, tree.ToText().Length);
    }

    [Fact]
    public void Nothing_in_a_file_throws() => PlanText.All.Sample(text => Sample.Parse(text).Statements.Count >= 0, iter: 20_000);
}
