namespace Floorplan.Model;

/// <summary>What a unit makes, as far as figures differ by it.</summary>
public enum Trade
{
    Poultry,
    RedMeat,
    Game,
    Fish,
    Dairy,
    Produce,
    Bakery,
    Kitchen,
    Eggs,
}

public static class Trades
{
    /// <summary>Where animals are slaughtered or their meat is cut.</summary>
    public static IReadOnlyList<Trade> Meat { get; } = [Trade.Poultry, Trade.RedMeat, Trade.Game];

    /// <summary>As a plan writes it: <c>red meat</c>.</summary>
    public static string Word(this Trade trade) => trade == Trade.RedMeat ? "red meat" : trade.ToString().ToLowerInvariant();

    /// <summary>Null for a word that is none.</summary>
    public static Trade? Of(string word) => Enum.GetValues<Trade>().Where(t => t.Word() == word).Select(t => (Trade?)t).FirstOrDefault();
}

/// <summary>Whose plant it is in the United States: regimes that exclude each other.</summary>
public enum PlantOf
{
    /// <summary>Meat or poultry under federal inspection: 9 CFR 416.</summary>
    Inspected,

    /// <summary>A food plant of 21 CFR 117.</summary>
    Food,

    /// <summary>A shop or kitchen under the Food Code as its state adopted it.</summary>
    Retail,

    /// <summary>Grade A under the Pasteurized Milk Ordinance.</summary>
    Milk,

    /// <summary>Free of federal inspection by size or kind; state law says what holds.</summary>
    Exempt,
}
