using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;

namespace Floorplan.Arrange.CuttingStock;

/// <summary>
/// Cuts the pieces of all frames from the fewest stock bars. The longest pieces are laid first where they fit (first fit decreasing);
/// where that takes as few bars as the pieces together need at least, it is the fewest, else a solver looks for less and proves it.
/// </summary>
public static class StockCutter
{
    public static IReadOnlyList<StockPlan> Cut(CutList list, Length bar, Length kerf)
        => [.. list.Totals.Select(t => Cut(t.Section, PiecesOf(list, t.Section), bar, kerf))];

    public static StockPlan Cut(SteelSection section, IReadOnlyList<StockPiece> pieces, Length bar, Length kerf)
    {
        var tooLong = pieces.Where(p => p.Length > bar).ToList();
        var fitting = pieces.Where(p => p.Length <= bar).OrderByDescending(p => p.Length).ToList();
        var bars = FirstFit(fitting, bar, kerf);
        bool fewest = bars.Count <= LeastBars(fitting, bar, kerf);
        if (!fewest)
        {
            (bars, fewest) = FewestBars.Find(fitting, bars, bar, kerf);
        }

        return new StockPlan(section, bar, kerf, [.. bars.Select(b => StockBar.Of(b, bar, kerf)).OrderBy(b => b.Left)], tooLong, fewest);
    }

    private static List<StockPiece> PiecesOf(CutList list, SteelSection section) =>
        [.. list.Rows.Where(r => r.Piece.Section == section)
            .SelectMany(r => Enumerable.Repeat(new StockPiece(r.Opening, r.Piece.Part, r.Piece.Length), r.Count))];

    private static List<List<StockPiece>> FirstFit(IEnumerable<StockPiece> pieces, Length bar, Length kerf)
    {
        var bars = new List<List<StockPiece>>();
        foreach (var piece in pieces)
        {
            var room = bars.Find(b => Needed(b, kerf) + piece.Length <= bar);
            if (room is null)
            {
                bars.Add([piece]);
            }
            else
            {
                room.Add(piece);
            }
        }

        return bars;
    }

    private static Length Needed(IEnumerable<StockPiece> pieces, Length kerf)
        => pieces.Aggregate(Length.Zero, (sum, p) => sum + p.Length + kerf);

    /// <summary>No way takes fewer: all pieces end to end, and pieces over half a bar, of which no two share one.</summary>
    private static int LeastBars(IReadOnlyCollection<StockPiece> pieces, Length bar, Length kerf)
    {
        int byLength = (int)Math.Ceiling(Needed(pieces, kerf).Nanometres / (double)(bar + kerf).Nanometres);
        return Math.Max(byLength, pieces.Count(p => (p.Length * 2) + kerf > bar));
    }
}
