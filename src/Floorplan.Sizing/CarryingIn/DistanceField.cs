namespace Floorplan.Sizing.CarryingIn;

/// <summary>How far each cell of a grid is from the nearest marked one.</summary>
internal static class DistanceField
{
    /// <summary>
    /// From the middle of each cell to the near edge of the nearest marked cell. Offsets are handed on from cell to cell in two sweeps
    /// (P.-E. Danielsson, Euclidean distance mapping, 1980), which is off by a small part of a cell at most.
    /// </summary>
    public static double[] Of(bool[] marked, int wide, int deep, double cell)
    {
        int[] x = new int[marked.Length];
        int[] y = new int[marked.Length];
        long[] squared = new long[marked.Length];
        for (int i = 0; i < marked.Length; i++)
        {
            squared[i] = marked[i] ? 0 : long.MaxValue;
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
            far[i] = squared[i] == long.MaxValue ? double.MaxValue : Math.Max(0, Math.Sqrt(squared[i]) - 0.5) * cell;
        }

        return far;

        void Sweep(int row, int from)
        {
            int start = row * wide;
            bool inside = row + from >= 0 && row + from < deep;
            for (int column = 0; column < wide; column++)
            {
                int here = start + column;
                if (inside)
                {
                    int beside = here + (from * wide);
                    Take(here, beside, 0, 1);
                    if (column > 0)
                    {
                        Take(here, beside - 1, 1, 1);
                    }

                    if (column + 1 < wide)
                    {
                        Take(here, beside + 1, 1, 1);
                    }
                }

                if (column > 0)
                {
                    Take(here, here - 1, 1, 0);
                }
            }

            for (int column = wide - 2; column >= 0; column--)
            {
                Take(start + column, start + column + 1, 1, 0);
            }
        }

        void Take(int here, int there, int dx, int dy)
        {
            if (squared[there] == long.MaxValue)
            {
                return;
            }

            long farX = x[there] + dx, farY = y[there] + dy;
            long far = (farX * farX) + (farY * farY);
            if (far < squared[here])
            {
                (x[here], y[here], squared[here]) = ((int)farX, (int)farY, far);
            }
        }
    }
}
