namespace Floorplan.Checks.Framework;

public enum RuleGroup
{
    RoomAndPlace,
    Hygiene,
    Hands,
    WaterAndDrain,
    PowerAndLight,
    GettingOut,
    Shell,
    File,
}

public static class RuleGroups
{
    /// <summary>As lists print it.</summary>
    public static string Title(this RuleGroup group) => group switch
    {
        RuleGroup.RoomAndPlace => "Room and place",
        RuleGroup.WaterAndDrain => "Water and drain",
        RuleGroup.PowerAndLight => "Power and light",
        RuleGroup.GettingOut => "Getting out",
        _ => group.ToString(),
    };
}
