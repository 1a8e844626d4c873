namespace Floorplan.Checks.Measuring;

/// <summary>How far each cell of a grid is from the nearest marked one.</summary>
internal static class DistanceField
{
    private const int Nowhere = 1 << 20;

    /// <summary>
    /// From the middle of each cell to the near edge of the nearest marked cell. Offsets are handed on from cell to cell in two sweeps
    /// (P.-E. Danielsson, Euclidean distance mapping, 1980), which is off by a small part of a cell at most.
    /// </summary>
    public static double[] Of(bool[] marked, int wide, int deep, double cell)
    {
        int[] x = new int[marked.Length];
        int[] y = new int[marked.Length];
        for (int i = 0; i < marked.Length; i++)
        {
            x[i] = y[i] = marked[i] ? 0 : Nowhere;
        }

        for (int row = 0; row < deep; row++)
        {
            Sweep(row, -1);
        }

        for (int row = deep - 1; row >= 0; row--)
        {
            Sweep(row, 1);
        }

        double[] far = new double[marked.Length];
        for (int i = 0; i < far.Length; i++)
        {
            far[i] = x[i] >= Nowhere / 2 ? double.MaxValue : Math.Max(0, Math.Sqrt(((double)x[i] * x[i]) + ((double)y[i] * y[i])) - 0.5) * cell;
        }

        return far;

        void Sweep(int row, int from)
        {
            for (int column = 0; column < wide; column++)
            {
                Take(row, column, 0, from);
                Take(row, column, -1, from);
                Take(row, column, 1, from);
                Take(row, column, -1, 0);
            }

            for (int column = wide - 1; column >= 0; column--)
            {
                Take(row, column, 1, 0);
            }
        }

        void Take(int row, int column, int dx, int dy)
        {
            int otherRow = row + dy;
            int otherColumn = column + dx;
            if (otherRow < 0 || otherRow >= deep || otherColumn < 0 || otherColumn >= wide)
            {
                return;
            }

            int here = (row * wide) + column;
            int there = (otherRow * wide) + otherColumn;
            int newX = x[there] + Math.Abs(dx);
            int newY = y[there] + Math.Abs(dy);
            if (x[there] < Nowhere && Squared(newX, newY) < Squared(x[here], y[here]))
            {
                (x[here], y[here]) = (newX, newY);
            }
        }

        static long Squared(long x, long y) => (x * x) + (y * y);
    }
}
