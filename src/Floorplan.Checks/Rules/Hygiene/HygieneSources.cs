using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Texts that several rules of this folder stand on.</summary>
internal static class HygieneSources
{
    public static Source OneWayFlow { get; } = new("Codex CXC 1-1969 s.3.1.2, rev. 2020/2022: areas of different hygiene apart by wall, distance, one-way flow, air, or time and cleaning", Origin.FoundInSecondaryCopy);

    public static Source EdibleApart { get; } = new("9 CFR 416.2(b)(4), US CFR: edible rooms apart from inedible as far as needed", Origin.FromMemory, Force.Law);

    public static Source NoCrossFlow { get; } = new("South Africa, Poultry Regulations 2006, reg 10: no cross-flow of clean and dirty, inedible leaves continuously", Origin.FoundInPublicCopy);

    public static Source SpaceOrTime { get; } = new("Reg (EC) 853/2004 Annex III s.II ch.II(2): steps apart in space or time", Origin.FoundInPublicCopy, Force.Law);

    public static Source Ranks { get; } = new("Order of classes: dirty, toilet and plant lowest, staff and dry between, clean and cold highest", Origin.OwnAssumption);
}
