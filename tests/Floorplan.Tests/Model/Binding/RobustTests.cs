using System.Diagnostics;
using System.Globalization;
using System.Text;
using CsCheck;
using Floorplan.Language.Parsing;
using Xunit;

namespace Floorplan.Tests.Model.Binding;

public class RobustTests
{
    [Fact]
    public void Text_with_lines_swapped_cut_and_doubled_binds_without_an_exception()
    {
        string[] lines = GuidePlan.Text.Split('\n');
        (from takes in Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, 80], Gen.Int[0, 3]).Array[1, 60]
         select takes).Sample(
            takes =>
            {
                var text = new StringBuilder(GuidePlan.Text);
                foreach (var (line, at, what) in takes)
                {
                    string taken = lines[line].Length == 0 ? "plan" : lines[line];
                    int cut = Math.Min(at, taken.Length);
                    switch (what)
                    {
                        case 0:
                            text.Append('\n').Append(taken);
                            break;
                        case 1:
                            text.Replace(taken + "\n", taken[..cut] + "\n");
                            break;
                        case 2:
                            text.Replace(taken, taken[cut..]);
                            break;
                        default:
                            text.Replace(at.ToString(CultureInfo.InvariantCulture), (at * 100_000).ToString(CultureInfo.InvariantCulture));
                            break;
                    }
                }

                PlanTexts.Bind(text.ToString());
            },
            iter: 300);
    }

    [Fact]
    public void Ten_thousand_stations_bind_in_time()
    {
        // Target of the design: about linear cost. Half a minute is far above the 0.5 s measured, so that a slow machine passes.
        var text = new StringBuilder("plan \"Large\"\nshell shed 900 m x 100 m x 3 m\nroom all \"All\" dry from west to east\n");
        for (int i = 0; i < 10_000; i++)
        {
            string place = i % 100 == 0
                ? FormattableString.Invariant($"at {i / 100 * 5000}, 1000")
                : $"in line with s{i - 1}, north of s{i - 1} gap 100";
            text.Append(CultureInfo.InvariantCulture, $"station s{i} \"S\" in all\n  size 600 x 600 x 900\n  place {place}\n");
        }

        var watch = Stopwatch.StartNew();
        var plan = PlanTexts.Whole(text.ToString());
        Assert.Equal(10_000, plan.Stations.Count);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(30), watch.Elapsed.ToString());
    }

    [Fact]
    public void Ten_thousand_unknown_names_are_told_in_time()
    {
        var text = new StringBuilder(PlanTexts.TwoRooms);
        for (int i = 0; i < 5_000; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"station s{i} \"S\" in room{i}\n  size 600 x 600 x 900\n  place east of nothing-of-that-name-{i}, centred\n");
        }

        var watch = Stopwatch.StartNew();
        var told = PlanTexts.Bind(text.ToString()).Diagnostics;
        Assert.Equal(Bounds.MostMistakes + 1, told.Count);
        Assert.Equal("too-many-mistakes", told[^1].Code);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(30), watch.Elapsed.ToString());
    }

    [Fact]
    public void More_things_than_the_bound_are_refused_once()
    {
        string text = PlanTexts.TwoRooms
            + string.Concat(Enumerable.Range(0, 21_000).Select(i => $"drain f{i} floor in wet, centred, 100\n"));
        Assert.Equal("a plan has at most 20000 statements", Assert.Single(PlanTexts.Bind(text).Diagnostics).Message);
    }
}
