namespace Floorplan.Drawing.Blocks;

/// <summary>Shares the width of a table among its columns so that it takes few lines. All in paper mm.</summary>
internal static class ColumnShares
{
    /// <summary>What is to be shared is given out in so many parts; own choice.</summary>
    private const int Parts = 16;

    /// <summary>Lines break between words, so text takes about this much more than its length; own estimate.</summary>
    private const double Ragged = 1.12;

    /// <summary>Part by part to the column that saves most lines, or else to the one with most text for its width.</summary>
    /// <param name="least">No column becomes narrower.</param>
    /// <param name="cells">The length of every text, row by row.</param>
    public static double[] Short(double[] least, double room, double[][] cells)
    {
        double[] widths = [.. least];
        double part = (room - least.Sum()) / Parts;
        double[] text = [.. least.Select((_, i) => cells.Sum(c => c[i]))];
        for (int k = 0; k < Parts; k++)
        {
            double now = Lines(cells, widths);
            double[] saved = [.. widths.Select((_, i) => now - Lines(cells, [.. widths.Select((w, n) => n == i ? w + part : w)]))];
            int best = saved.Max() > 0
                ? Array.IndexOf(saved, saved.Max())
                : Enumerable.Range(0, widths.Length).MaxBy(i => text[i] / widths[i]);
            widths[best] += part;
        }

        return widths;
    }

    /// <summary>
    /// Where the widths together take more than there is room, the widest are cut down to one width, so that short words and figures
    /// stay whole. Widths that find room stay as they are.
    /// </summary>
    public static double[] Capped(double[] wanted, double room)
    {
        if (wanted.Sum() <= room)
        {
            return wanted;
        }

        double left = room;
        int columns = wanted.Length;
        foreach (double width in wanted.Order())
        {
            if (width * columns > left)
            {
                break;
            }

            left -= width;
            columns--;
        }

        double most = left / Math.Max(1, columns);
        return [.. wanted.Select(w => Math.Min(w, most))];
    }

    /// <summary>About how many lines a table has.</summary>
    public static double Lines(double[][] cells, double[] widths)
    {
        double lines = 0;
        foreach (double[] row in cells)
        {
            double most = 1;
            for (int i = 0; i < row.Length; i++)
            {
                most = Math.Max(most, row[i] <= widths[i] ? 1 : Math.Ceiling(row[i] * Ragged / widths[i]));
            }

            lines += most;
        }

        return lines;
    }
}
