using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Frames;

/// <summary>The pieces of all frames, equal ones of one opening together, and what they weigh by section.</summary>
public sealed record CutList(IReadOnlyList<CutListRow> Rows, IReadOnlyList<SectionTotal> Totals)
{
    /// <summary>Each piece as long as the list prints it: a welder saws to that, and the sums and bars are of what is sawn.</summary>
    public static CutList Of(IReadOnlyList<CutOut> cuts, UnitSystem units)
    {
        var rows = cuts.Where(c => c.Frame is not null)
            .SelectMany(c => c.Frame!.Pieces.Select(p => p with { Length = LengthRounding.Round(p.Length, units) })
                .GroupBy(p => p).Select(g => new CutListRow(c.Opening.Id, g.Key, g.Count())))
            .ToList();
        var totals = rows.GroupBy(r => r.Piece.Section)
            .Select(g => new SectionTotal(
                g.Key,
                g.Sum(r => r.Count),
                new Length(g.Sum(r => r.Piece.Length.Nanometres * r.Count)),
                g.Sum(r => r.Piece.Kilograms * r.Count)));
        return new CutList(rows, [.. totals]);
    }
}

/// <param name="Opening">Id of the opening that it frames.</param>
public sealed record CutListRow(string Opening, FramePiece Piece, int Count);

/// <param name="Length">All pieces end to end, over their long points.</param>
public sealed record SectionTotal(SteelSection Section, int Pieces, Length Length, double Kilograms);
