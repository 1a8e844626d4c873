using System.Collections.Frozen;
using Floorplan.Checks.Rules.File;
using Floorplan.Checks.Rules.GettingOut;
using Floorplan.Checks.Rules.Hands;
using Floorplan.Checks.Rules.Hygiene;
using Floorplan.Checks.Rules.PowerAndLight;
using Floorplan.Checks.Rules.RoomAndPlace;
using Floorplan.Checks.Rules.Shell;
using Floorplan.Checks.Rules.TheDay;
using Floorplan.Checks.Rules.WaterAndDrain;

namespace Floorplan.Checks.Framework;

/// <summary>
/// Every rule, in the order they are listed and run. Written out, so that a cold start does not search the assembly; a test proves that
/// none is left out.
/// </summary>
public static class RuleCatalogue
{
    /// <summary>The file's own rules come last: they look at what the others found.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        .. RoomAndPlaceRules.All,
        .. HygieneRules.All,
        .. HandsRules.All,
        .. WaterAndDrainRules.All,
        .. PowerAndLightRules.All,
        .. GettingOutRules.All,
        .. ShellRules.All,
        .. DayRules.All,
        .. FileRules.All,
    ];

    private static readonly FrozenDictionary<string, Rule> ByName = All.ToFrozenDictionary(r => r.Name);

    /// <summary>Names that rules had before 2026-11-27. A plan that uses one is told the new name.</summary>
    private static readonly FrozenDictionary<string, string> Renamed = new Dictionary<string, string>
    {
        ["no-air-gap"] = "air-gap-missing",
        ["no-backflow-guard"] = "backflow-guard-missing",
        ["no-changing-place"] = "changing-place-missing",
        ["no-drain-near"] = "drain-too-far",
        ["no-eyewash-near"] = "eyewash-too-far",
        ["no-light"] = "light-missing",
        ["no-sanitizer-near"] = "sterilizer-too-far",
        ["no-water-near"] = "water-too-far",
        ["no-way-out-for-waste"] = "way-out-for-waste-missing",
    }.ToFrozenDictionary();

    public static Rule? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>What a rule of that old name is called now; null when no rule had it.</summary>
    public static string? NewNameOf(string name) => Renamed.GetValueOrDefault(name);
}
