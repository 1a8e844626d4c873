using Floorplan.Model;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Texts that several rules of this folder stand on.</summary>
internal static class HygieneSources
{
    public static Source OneWayFlow { get; } =
        new("Codex CXC 1-1969 s.3.1.2, rev. 2020/2022: areas of different hygiene apart by wall, distance, one-way flow, air, or time "
            + "and cleaning", Origin.FoundInSecondaryCopy, Force.Guidance);

    public static Source EdibleApart { get; } =
        new Source("9 CFR 416.2(b)(4), US CFR: edible rooms apart from inedible as far as needed", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Inspected);

    /// <summary>Trailers, tents and homes; it stands in the place of chapter I.</summary>
    public static Source Mobile { get; } =
        new Source("Reg (EC) 852/2004 Annex II ch.III: hand-wash and changing for mobile and temporary premises", Origin.FoundInPublicCopy,
            Force.Law).In("eu");

    /// <summary>By trade, where a text names rooms that stay apart. A split in time is lawful where the text says so.</summary>
    public static IReadOnlyList<Source> RoomsApart { get; } =
    [
        EdibleApart,
        new Source("FSIS Guidebook ch.10 s.2, 1997: full wall and self-closing door between live dock and clean rooms",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("us").For(Trade.Poultry),
        new Source("FSIS Guidebook ch.9 s.22, 1997: hoisting to singeing of pigs apart from dressing, openings for carcasses only",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("us").For(Trade.RedMeat),
        new Source("8 CCR 1202-16, Colorado, 2024: killing, scalding and plucking in a room of their own, or split in time",
            Origin.FoundInPublicCopy, Force.Law).In("us-co").For(Trade.Poultry),
        new Source("Pasteurized Milk Ordinance, item 5p: raw receiving, can washing, pasteurizing and packing apart", Origin.FromMemory,
            Force.ModelCode).In("us").For(Trade.Dairy).Of(PlantOf.Milk),
        new Source("1 NYCRR 262.3(h), New York: evisceration of fish segregated; clear space will do", Origin.FoundInPublicCopy, Force.Law)
            .In("us-ny").For(Trade.Fish),
        new Source("21 CFR 117.20(b)(2), US CFR: work that may foul food apart by place, time, wall, air flow or closed system",
            Origin.FromMemory, Force.Law).In("us").Of(PlantOf.Food),
        new Source("Reg (EC) 853/2004 Annex III s.I ch.II(2): steps of slaughter apart in space or time, guts in a room of their own",
            Origin.FoundInPublicCopy, Force.Law).In("eu").For(Trade.RedMeat),
        new Source("Reg (EC) 853/2004 Annex III s.II ch.II(2): steps of slaughter apart in space or time", Origin.FoundInPublicCopy,
            Force.Law).In("eu").For(Trade.Poultry),
        new Source("Regulation (EC) 852/2004, Annex II, chapter I(2): the layout permits good hygiene; no list of rooms", Origin.FromMemory,
            Force.Law).In("eu"),
        new Source("South Africa, Poultry Regulations 2006, reg 5: rooms of unlike work joined by hatches only, above 100 birds a day",
            Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.Poultry),
        new Source("South Africa, Red Meat Regulations 2004, reg 5: stunning, bleeding and dressing in separate areas",
            Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.RedMeat),
        new Source("South Africa, R961, reg 6: parlour, milk room, change room and scullery apart", Origin.FoundInPublicCopy, Force.Law)
            .In("za").For(Trade.Dairy),
    ];

    public static Source NoCrossFlow { get; } =
        new Source(
            "South Africa, Poultry Regulations 2006, reg 10: no cross-flow of clean and dirty, inedible leaves continuously",
            Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.Poultry);

    public static Source SpaceOrTime { get; } =
        new Source("Reg (EC) 853/2004 Annex III s.II ch.II(2): steps apart in space or time", Origin.FoundInPublicCopy, Force.Law)
            .In("eu").For(Trade.Poultry, Trade.RedMeat);

    public static Source ToiletTable { get; } =
        new Source("29 CFR 1910.141(c)(1), Table J-1, US CFR: 1 toilet for 1 to 15 people, 2 to 35, 3 to 55, 4 to 80, 5 to 110, 6 "
            + "to 150, then "
            + "one for each 40", Origin.FoundInPublicCopy, Force.Law).In("us");

    public static Source Lavatories { get; } =
        new Source(
            "Regulation (EC) 852/2004, Annex II, chapter I(3): flush lavatories, not opening on food rooms", Origin.FoundInSecondaryCopy,
            Force.Law).In("eu");

    public static Source AtLeastOneToilet { get; } =
        new Source("Food Code 2022, 5-203.12: at least one toilet", Origin.FromMemory, Force.ModelCode).In("us").Of(PlantOf.Retail);

    public static Source Ranks { get; } =
        new("Order of classes: dirty, toilet and plant lowest, staff and dry between, clean and cold highest", Origin.OwnAssumption);
}
