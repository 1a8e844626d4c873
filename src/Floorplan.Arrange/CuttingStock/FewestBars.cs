using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;
using Google.OrTools.Sat;

namespace Floorplan.Arrange.CuttingStock;

/// <summary>The cutting-stock problem as an integer program: how many pieces of each length come from each bar.</summary>
internal static class FewestBars
{
    /// <summary>Work that the solver may spend, in its own repeatable measure and not in seconds; own choice.</summary>
    private const double MostWork = 20;

    /// <param name="known">A way that works; its bars are the most that are looked at.</param>
    /// <returns>The best way found, and whether it is proven that none takes fewer bars.</returns>
    public static (List<List<StockPiece>> Bars, bool Proven) Find(
        IReadOnlyList<StockPiece> pieces, List<List<StockPiece>> known, Length bar, Length kerf)
    {
        var kinds = pieces.GroupBy(p => p.Length).ToList();
        var model = new CpModel();
        var used = Enumerable.Range(0, known.Count).Select(b => model.NewBoolVar($"bar {b} is used")).ToArray();
        var counts = kinds.Select(kind => used.Select((_, b) => model.NewIntVar(0, kind.Count(), $"from bar {b}")).ToArray()).ToArray();
        for (int k = 0; k < kinds.Count; k++)
        {
            model.Add(LinearExpr.Sum(counts[k]) == kinds[k].Count());
        }

        for (int b = 0; b < used.Length; b++)
        {
            var taken = LinearExpr.WeightedSum(counts.Select(c => c[b]), kinds.Select(k => (k.Key + kerf).Nanometres));
            model.Add(taken <= (bar + kerf).Nanometres * used[b]);
            if (b > 0)
            {
                model.AddImplication(used[b], used[b - 1]);
            }
        }

        model.Minimize(LinearExpr.Sum(used));

        var solver = RepeatableSolver.Of(MostWork);
        var status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? (Bars(solver, kinds, counts, used), status == CpSolverStatus.Optimal)
            : (known, false);
    }

    private static List<List<StockPiece>> Bars(
        CpSolver solver, List<IGrouping<Length, StockPiece>> kinds, IntVar[][] counts, BoolVar[] used)
    {
        var left = kinds.ConvertAll(k => new Queue<StockPiece>(k));
        var bars = new List<List<StockPiece>>();
        for (int b = 0; b < used.Length; b++)
        {
            var cut = new List<StockPiece>();
            for (int k = 0; k < kinds.Count; k++)
            {
                for (long n = solver.Value(counts[k][b]); n > 0; n--)
                {
                    cut.Add(left[k].Dequeue());
                }
            }

            if (cut.Count > 0)
            {
                bars.Add(cut);
            }
        }

        return bars;
    }
}
