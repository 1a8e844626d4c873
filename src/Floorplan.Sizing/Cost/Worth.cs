namespace Floorplan.Sizing.Cost;

/// <summary>What money spent at once is against money that comes every year; textbook formulas.</summary>
internal static class Worth
{
    /// <summary>Years until it is back, without interest; null where it never comes back.</summary>
    public static double? Payback(double spent, double yearly) => yearly > 0 ? spent / yearly : null;

    /// <summary>What one a year for some years is worth now.</summary>
    /// <param name="interest">A year, 0.08 for 8 %.</param>
    public static double Annuity(double interest, double years)
        => interest > 0 ? (1 - Math.Pow(1 + interest, -years)) / interest : years;

    /// <summary>Net present value.</summary>
    public static double Present(double spent, double yearly, double interest, double years)
        => (yearly * Annuity(interest, years)) - spent;

    /// <summary>Years until it is back with interest; null where interest eats it all.</summary>
    public static double? PaybackWithInterest(double spent, double yearly, double interest) => interest <= 0
        ? Payback(spent, yearly)
        : yearly > 0 && spent * interest < yearly ? -Math.Log(1 - (spent * interest / yearly)) / Math.Log(1 + interest) : null;

    /// <summary>What one piece costs, building and running together.</summary>
    /// <param name="running">A year.</param>
    /// <param name="pieces">A year.</param>
    public static double Levelised(double spent, double running, double pieces, double interest, double years)
        => ((spent / Annuity(interest, years)) + running) / pieces;

    /// <summary>Pieces a day that pay for the day; null where a piece does not pay for itself.</summary>
    /// <param name="fixedCost">Of a day, however many are made.</param>
    /// <param name="price">Of one.</param>
    /// <param name="pieceCost">Of one.</param>
    public static double? BreakEven(double fixedCost, double price, double pieceCost)
        => price > pieceCost ? fixedCost / (price - pieceCost) : null;
}
