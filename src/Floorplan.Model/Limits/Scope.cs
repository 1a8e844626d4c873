namespace Floorplan.Model.Limits;

/// <summary>Where and for whom a published figure holds. What is empty holds for all.</summary>
/// <param name="Places">Words of code or country: <c>us</c>, <c>eu</c>, <c>us-wa</c>, <c>za</c>. One is enough.</param>
/// <param name="Trades">One is enough.</param>
/// <param name="Plants">Regimes of the United States. One is enough.</param>
public sealed record Scope(IReadOnlyList<string> Places, IReadOnlyList<Trade> Trades, IReadOnlyList<PlantOf> Plants)
{
    public static Scope Anywhere { get; } = new([], [], []);

    public ScopeFit Of(PlanHead head)
    {
        bool trade = Trades.Count == 0 || Trades.Any(head.Trades.Contains);
        if (Places.Count > 0 && !Places.Any(p => IsAt(head, p)))
        {
            return trade && Trades.Count > 0 ? ScopeFit.OtherPlace : ScopeFit.None;
        }

        if ((!trade && head.Trades.Count > 0) || (Plants.Count > 0 && head.Plant is { } plant && !Plants.Contains(plant)))
        {
            return ScopeFit.None;
        }

        return trade && (Plants.Count == 0 || head.Plant is not null) ? ScopeFit.Binds : ScopeFit.NotSaid;
    }

    /// <summary>A figure of one state goes before one of its country, one of a trade before one for all.</summary>
    public int Closeness(PlanHead head) => (Places.Contains(head.Country) && head.Country.Length > 0 ? 4 : Places.Count > 0 ? 2 : 0)
        + (Trades.Count > 0 || Plants.Count > 0 ? 1 : 0);

    /// <summary>Whether what is said of a plan lies in a place: a plan in Washington lies in the United States.</summary>
    private static bool IsAt(PlanHead head, string place) => place == head.Country || place switch
    {
        "us" => head.Code == CodeChoice.Us,
        "eu" => head.Code == CodeChoice.Eu,
        _ => false,
    };
}

/// <summary>How a figure stands to a plan.</summary>
public enum ScopeFit
{
    /// <summary>Of another place or trade: nothing is said of it.</summary>
    None,

    /// <summary>Of the plan's trade, but of another place: it may be quoted.</summary>
    OtherPlace,

    /// <summary>Of the plan's place, and the plan does not say its trade or whose plant it is: it may be quoted.</summary>
    NotSaid,

    Binds,
}
