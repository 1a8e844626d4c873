using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Frames;

/// <summary>How the pieces of one section are cut from stock bars.</summary>
/// <param name="Bar">Length of a stock bar.</param>
/// <param name="Kerf">Width of a saw cut.</param>
/// <param name="TooLong">Pieces longer than a bar.</param>
/// <param name="IsFewest">Proven: no other way takes fewer bars.</param>
public sealed record StockPlan(
    SteelSection Section, Length Bar, Length Kerf, IReadOnlyList<StockBar> Bars, IReadOnlyList<StockPiece> TooLong, bool IsFewest)
{
    /// <summary>6 m, or 20 ft; common stock lengths, no source.</summary>
    public static Length UsualBar(UnitSystem units) => units == UnitSystem.Metric ? Length.FromMillimetres(6000) : Length.FromInches(240);

    /// <summary>3 mm, or 1/8 in: a chop saw; own assumption.</summary>
    public static Length UsualKerf(UnitSystem units) => units == UnitSystem.Metric ? Length.FromMillimetres(3) : Length.FromInches(0.125);
}

/// <summary>One bar and what is cut from it, longest piece first.</summary>
/// <param name="Left">What is left of the bar after the last cut; zero when nothing is.</param>
public sealed record StockBar(IReadOnlyList<StockPiece> Pieces, Length Left)
{
    /// <summary>Pieces one after another, a saw cut after each.</summary>
    public static StockBar Of(IEnumerable<StockPiece> pieces, Length bar, Length kerf)
    {
        StockPiece[] cut =
            [.. pieces.OrderByDescending(p => p.Length).ThenBy(p => p.For, StringComparer.Ordinal)
                .ThenBy(p => p.Part, StringComparer.Ordinal)];
        var left = cut.Aggregate(bar, (rest, piece) => rest - piece.Length - kerf);
        return new StockBar(cut, Length.Max(left, Length.Zero));
    }
}

/// <param name="For">Id of the opening that it frames.</param>
/// <param name="Length">Over the long points.</param>
public sealed record StockPiece(string For, string Part, Length Length);
