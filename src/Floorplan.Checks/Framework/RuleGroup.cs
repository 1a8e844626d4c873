namespace Floorplan.Checks.Framework;

public enum RuleGroup
{
    RoomAndPlace,
    Hygiene,
    Hands,
    WaterAndDrain,
    GettingOut,
    Shell,
    File,
}
