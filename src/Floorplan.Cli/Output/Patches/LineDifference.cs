namespace Floorplan.Cli.Output.Patches;

/// <summary>
/// The fewest lines to take out and put in that turn one text into another, by the greedy method of E. W. Myers, "An O(ND) Difference
/// Algorithm and Its Variations", Algorithmica 1 (1986). Work grows with the lines times the changes, and of these there are few here.
/// </summary>
internal static class LineDifference
{
    /// <returns>Every line of both texts in order, with <c>-</c> for one that goes, <c>+</c> for one that comes, else a space.</returns>
    public static IReadOnlyList<(char Sign, string Line)> Of(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        var reached = Reached(before, after);
        var lines = new List<(char, string)>();
        int x = before.Count;
        int y = after.Count;
        for (int changes = reached.Count; changes > 0; changes--)
        {
            var last = reached[changes - 1];
            int k = ComesFromAbove(last, x - y, changes) ? x - y + 1 : x - y - 1;
            int fromX = last[k];
            while (x > fromX && y > fromX - k)
            {
                lines.Add((' ', before[--x]));
                y--;
            }

            lines.Add(x == fromX ? ('+', after[--y]) : ('-', before[--x]));
        }

        while (x > 0)
        {
            lines.Add((' ', before[--x]));
        }

        lines.Reverse();
        return lines;
    }

    /// <summary>For each number of changes how far each diagonal gets; the last that does not reach the end.</summary>
    private static List<Dictionary<int, int>> Reached(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        var all = new List<Dictionary<int, int>>();
        var last = new Dictionary<int, int> { [1] = 0 };
        for (int changes = 0; ; changes++)
        {
            var now = new Dictionary<int, int>();
            for (int k = -changes; k <= changes; k += 2)
            {
                int x = ComesFromAbove(last, k, changes) ? last[k + 1] : last[k - 1] + 1;
                while (x < before.Count && x - k < after.Count && before[x] == after[x - k])
                {
                    x++;
                }

                if (x >= before.Count && x - k >= after.Count)
                {
                    return all;
                }

                now[k] = x;
            }

            all.Add(last = now);
        }
    }

    private static bool ComesFromAbove(Dictionary<int, int> last, int k, int changes)
        => k == -changes || (k != changes && last[k - 1] < last[k + 1]);
}
