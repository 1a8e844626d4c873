using Floorplan.Model;

namespace Floorplan.Checks.Measuring;

/// <summary>Sources that more than one rule cites.</summary>
internal static class Published
{
    /// <summary>Measured bodies: 4082 men and 1986 women; percentiles computed from the public data.</summary>
    public static Source AnsurTwo { get; } = new(
        "ANSUR II, Gordon and others, NATICK/TR-15/007, 2014", Origin.FoundInPublicCopy, Force.Measured);

    public static Source SouthAfricanBasins { get; } = new Source(
        "Red Meat Regulations 2004 and Poultry Regulations 2006 under the Meat Safety Act 2000, reg 15, South Africa",
        Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.RedMeat, Trade.Poultry);

    public static Source SouthAfricanSterilizers { get; } = new Source(
        "Red Meat Regulations 2004 and Poultry Regulations 2006 under the Meat Safety Act 2000, reg 14, South Africa: water of 82 "
            + "°C within "
            + "3 m, next to the basin", Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.RedMeat, Trade.Poultry);

    public static Source EuropeanSterilizers { get; } = new Source(
        "Reg (EC) 853/2004 Annex III s.I and s.II ch.II, III: water of 82 °C or more, or as good, to disinfect tools; no distance",
        Origin.FoundInPublicCopy, Force.Law).In("eu").For([.. Trades.Meat]);

    public static Source PlanReviewSinks { get; } = new Source(
        "FDA/CFP Food Establishment Plan Review Guide 2000, Part 4", Origin.FoundInPublicCopy, Force.Guidance).In("us").Of(PlantOf.Retail);

    public static IReadOnlyList<Source> FloorDrains { get; } =
    [
        new Source("9 CFR 416.2(e)(4), US CFR: drains where floors are flooded to clean them", Origin.FoundInSecondaryCopy, Force.Law)
            .In("us").Of(PlantOf.Inspected),
        new Source("21 CFR 117.37(b), US CFR: drainage of floors that are flooded to clean them", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Food),
        new Source("77 Ill. Adm. Code 730.5030, Illinois: food factories drain floors that are flooded", Origin.FoundInPublicCopy,
            Force.Law)
            .In("us-il"),
        new Source("Regulation (EC) 852/2004, Annex II, chapter I(8): drainage fit for its purpose", Origin.FromMemory, Force.Law).In("eu"),
    ];

    /// <summary>Water that may not run back; of 9 CFR 416.2(e), (5) is for waste and product water, (6) for sewer gas.</summary>
    public static IReadOnlyList<Source> Backflow { get; } =
    [
        new Source("9 CFR 416.2(e)(5), US CFR: no backflow and no cross-connection between waste and product water",
            Origin.FoundInSecondaryCopy, Force.Law).In("us").Of(PlantOf.Inspected),
        new Source("FDA Food Code 2022, 5-203.14: a backflow guard on a hose bibb with a hose on it", Origin.FromMemory, Force.ModelCode)
            .In("us").Of(PlantOf.Retail),
        new Source("21 CFR 117.37(b)(5), US CFR: no backflow between waste and water for food", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Food),
        new Source("Regulation (EC) 852/2004, Annex II, chapter VII: other water may not flow back into drinking water",
            Origin.FromMemory, Force.Law).In("eu"),
    ];

    /// <summary>Hands: what each regime asks, none of it with a distance.</summary>
    public static IReadOnlyList<Source> HandSinks { get; } =
    [
        new Source("9 CFR 416.2(h), US CFR: hand washing where it is needed, with hot and cold water", Origin.FoundInSecondaryCopy,
            Force.Law)
            .In("us").Of(PlantOf.Inspected),
        new Source("21 CFR 117.37(e), US CFR: hand washing at a place that is convenient, of a fit temperature", Origin.FromMemory,
            Force.Law)
            .In("us").Of(PlantOf.Food),
        new Source("FDA Food Code 2022, 5-203.11 and 5-204.11: hand sinks for convenient use where food is handled",
            Origin.FoundInPublicCopy, Force.ModelCode).In("us").Of(PlantOf.Retail),
        new Source("21 CFR 112.33(b) and 112.130, US CFR: hand washing at toilets and where produce is handled", Origin.FoundInPublicCopy,
            Force.Law).In("us").For(Trade.Produce),
        new Source("Regulation (EC) 852/2004, Annex II, chapter I(4): enough basins for hands, well placed, with hot and cold water",
            Origin.FoundInSecondaryCopy, Force.Law).In("eu"),
    ];
}
