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
        var offsets = new Offsets(marked, wide, deep);
        for (int row = 0; row < deep; row++)
        {
            offsets.Sweep(row, -1);
        }

        for (int row = deep - 1; row >= 0; row--)
        {
            offsets.Sweep(row, 1);
        }

        double[] far = new double[marked.Length];
        for (int i = 0; i < far.Length; i++)
        {
            long squared = offsets.Squared(i);
            far[i] = squared == long.MaxValue ? double.MaxValue : Math.Max(0, Math.Sqrt(squared) - 0.5) * cell;
        }

        return far;
    }

    /// <summary>Of each cell to the nearest marked one that is known so far, in cells.</summary>
    private readonly struct Offsets
    {
        private readonly int wide;
        private readonly int deep;
        private readonly Offset[] cells;

        public Offsets(bool[] marked, int wide, int deep)
        {
            (this.wide, this.deep) = (wide, deep);
            cells = new Offset[marked.Length];
            for (int i = 0; i < marked.Length; i++)
            {
                cells[i].Squared = marked[i] ? 0 : long.MaxValue;
            }
        }

        public long Squared(int cell) => cells[cell].Squared;

        public void Sweep(int row, int from)
        {
            var here = cells.AsSpan(row * wide, wide);
            if (row + from >= 0 && row + from < deep)
            {
                var beside = cells.AsSpan((row + from) * wide, wide);
                for (int column = 0; column < here.Length; column++)
                {
                    Take(ref here[column], beside[column], 0, 1);
                    if (column > 0)
                    {
                        Take(ref here[column], beside[column - 1], 1, 1);
                    }

                    if (column + 1 < beside.Length)
                    {
                        Take(ref here[column], beside[column + 1], 1, 1);
                    }

                    if (column > 0)
                    {
                        Take(ref here[column], here[column - 1], 1, 0);
                    }
                }
            }
            else
            {
                for (int column = 1; column < here.Length; column++)
                {
                    Take(ref here[column], here[column - 1], 1, 0);
                }
            }

            for (int column = here.Length - 2; column >= 0; column--)
            {
                Take(ref here[column], here[column + 1], 1, 0);
            }
        }

        private static void Take(ref Offset here, in Offset there, int dx, int dy)
        {
            if (there.Squared >= here.Squared)
            {
                // As far already: from there it is no nearer.
                return;
            }

            long x = there.X + dx, y = there.Y + dy;
            long far = (x * x) + (y * y);
            if (far < here.Squared)
            {
                here = new Offset { X = (int)x, Y = (int)y, Squared = far };
            }
        }
    }

    private struct Offset
    {
        public int X;
        public int Y;
        public long Squared;
    }
}
