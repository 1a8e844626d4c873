namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Texts that several rules of this folder stand on.</summary>
internal static class HygieneSources
{
    public static Source OneWayFlow { get; } =
        new("Codex CXC 1-1969 s.3.1.2, rev. 2020/2022: areas of different hygiene apart by wall, distance, one-way flow, air, or time "
            + "and cleaning", Origin.FoundInSecondaryCopy);

    public static Source EdibleApart { get; } =
        new("9 CFR 416.2(b)(4), US CFR: edible rooms apart from inedible as far as needed", Origin.FromMemory, Force.Law);

    public static Source NoCrossFlow { get; } =
        new(
            "South Africa, Poultry Regulations 2006, reg 10: no cross-flow of clean and dirty, inedible leaves continuously",
            Origin.FoundInPublicCopy);

    public static Source SpaceOrTime { get; } =
        new("Reg (EC) 853/2004 Annex III s.II ch.II(2): steps apart in space or time", Origin.FoundInPublicCopy, Force.Law);

    public static Source ToiletTable { get; } =
        new("29 CFR 1910.141(c)(1), Table J-1, US CFR: 1 toilet for 1 to 15 people, 2 to 35, 3 to 55, 4 to 80, 5 to 110, 6 to 150, then "
            + "one for each 40", Origin.FoundInPublicCopy, Force.Law);

    public static Source Lavatories { get; } =
        new(
            "Regulation (EC) 852/2004, Annex II, chapter I(3): flush lavatories, not opening on food rooms", Origin.FoundInSecondaryCopy,
            Force.Law);

    public static Source AtLeastOneToilet { get; } =
        new("Food Code 2022, 5-203.12: at least one toilet", Origin.FromMemory, Force.ModelCode);

    public static Source Ranks { get; } =
        new("Order of classes: dirty, toilet and plant lowest, staff and dry between, clean and cold highest", Origin.OwnAssumption);
}
