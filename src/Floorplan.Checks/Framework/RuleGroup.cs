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
    TheDay,
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
        RuleGroup.TheDay => "The day",
        _ => group.ToString(),
    };
}
