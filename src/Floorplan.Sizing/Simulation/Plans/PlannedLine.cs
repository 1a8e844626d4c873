using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>The line of a plan, with what each of its steps is.</summary>
/// <param name="Whole">With all products of the day, one after the other; null where something is missing.</param>
/// <param name="Products">In their order; empty where something is missing.</param>
/// <param name="Stations">By step; null outside and at hatches.</param>
/// <param name="Needs">What is missing; with any of it there is no line.</param>
public sealed record PlannedLine(
    ProductLine? Whole, IReadOnlyList<PlannedProduct> Products, IReadOnlyList<Station?> Stations, IReadOnlyList<DayNeed> Needs)
{
    /// <summary>The product whose target is the hardest to make; the first until that is known.</summary>
    public int Tightest { get; init; }

    /// <summary>By step.</summary>
    internal IReadOnlyList<Stop> Stops { get; init; } = [];

    /// <summary>The line as that product sees it, alone; null where something is missing.</summary>
    public ProductLine? Line => Products.Count > 0 ? Products[Tightest].Line : null;

    /// <summary>Items an hour of that product.</summary>
    public double TargetPerHour => Products.Count > 0 ? Products[Tightest].PerHour : 0;

    /// <summary>The word for its items: <c>fish</c>.</summary>
    public string Unit => Products.Count > 0 ? Products[Tightest].Unit : "items";

    /// <summary>The same where it cannot be run after all.</summary>
    internal PlannedLine WithoutLine(DayNeed need) => new(null, [], Stations, [need]);

    /// <summary>How long the working day is, of all products.</summary>
    public long Work => Products.Sum(p => p.Work);

    /// <summary>Items of the day, of all products.</summary>
    public int Items => Whole?.Items ?? 0;

    /// <summary>The word for them: <c>fish</c>, or <c>quail and turkeys</c>.</summary>
    public string Things => Products.Count > 1 ? string.Join(" and ", Products.Select(p => p.Unit)) : Unit;

    /// <summary><c>120 quail/h for 2 h, then 12 turkeys/h for 2 h</c></summary>
    public string Asked => string.Join(", then ", Products.Select(p => p.Asked));

    /// <summary>How many items are asked for by when, in ticks from the start of work: corners of a line.</summary>
    public IReadOnlyList<(double At, double Items)> Target
    {
        get
        {
            var corners = new List<(double At, double Items)> { (0, 0) };
            corners.AddRange(Products.Select((_, p) => (
                (double)Products.Take(p + 1).Sum(x => x.Work), (double)Products.Take(p + 1).Sum(x => x.Line.Supply.Items))));
            return corners;
        }
    }

    /// <summary>
    /// As many items of a product as one thing holds; null where the plan does not say, or says it in a way that is not a number of
    /// these items: in another product.
    /// </summary>
    public static double? InItems(Quantity? said, Plan plan, int product = 0) => said is not { } amount ? null : amount.Unit.Kind switch
    {
        QuantityKind.Count when IsOfOther(amount, plan, product) => null,
        QuantityKind.Count => (double)amount.Number,
        QuantityKind.Mass when ItemKilograms(plan, product) is { } each => amount.Base / each,
        _ => null,
    };

    /// <summary>Whether it is counted in another product of the plan.</summary>
    public static bool IsOfOther(Quantity said, Plan plan, int product) => said.Unit.Kind == QuantityKind.Count
        && plan.Head.Products.Index().Any(p => p.Index != product && Same(p.Item.Unit, said.Unit.Symbol))
        && !Same(plan.Head.Products[product].Unit, said.Unit.Symbol);

    /// <summary>Null where the plan does not say.</summary>
    public static double? ItemKilograms(Plan plan, int product = 0)
        => plan.Head.Products.Count > product ? plan.Head.Products[product].WeightEach?.Base : null;

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}

/// <summary>One product of the day.</summary>
/// <param name="Product">Its index in the plan's head; 0 where that names none.</param>
/// <param name="Unit">The word for its items.</param>
/// <param name="PerHour">Items that the target asks for.</param>
/// <param name="Work">How long it is made, in ticks.</param>
/// <param name="Line">The line with this product alone.</param>
public sealed record PlannedProduct(int Product, string Unit, double PerHour, long Work, ProductLine Line)
{
    public string Asked => $"{QuantityText.Coarse(PerHour)} {Unit}/h for {QuantityText.Time(Ticks.Seconds(Work))}";
}
