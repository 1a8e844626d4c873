using Floorplan.Checks.Framework;
using Floorplan.Checks.Rules.LightAndAir;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class PowerAndLightRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new PanelSpace(),
        new OutletUnprotected(),
        new SwitchOutOfReach(),
        new CircuitOverloaded(),
        new VoltageMismatch(),
        new VoltageDropTooLarge(),
        new PanelTooSmall(),
        new LightMissing(),
        new LampsTooFew(),
        new TooDark(),
        new TooLittleAir(),
        new SteamWithoutExtract(),
        new CoolingTooSmall(),
        new ColdRoomWithoutUnit(),
        new ColdRoomTooWarm(),
    ];
}
