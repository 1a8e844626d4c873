namespace Floorplan.Sizing.Water;

/// <summary>Why a point serves a use.</summary>
public enum SupplyChoice
{
    /// <summary>It is the nearest of those in the room.</summary>
    OwnRoom,

    /// <summary>The room has none; it is the nearest of the plan.</summary>
    OtherRoom,

    /// <summary>No water point of the plan gives hot water; the heater does.</summary>
    Heater,

    /// <summary>The hose hangs on it.</summary>
    HangsOn,

    /// <summary>A heater is fed straight from the main.</summary>
    Main,

    /// <summary>Nothing serves it.</summary>
    None,
}

/// <summary>The reasons in words.</summary>
public static class SupplyChoices
{
    public static string Reason(this SupplyChoice choice) => choice switch
    {
        SupplyChoice.OwnRoom => "the nearest in its room",
        SupplyChoice.OtherRoom => "the nearest of the plan, since its room has none",
        SupplyChoice.Heater => "the heater, since no water point gives hot water",
        SupplyChoice.HangsOn => "the point that it hangs on",
        SupplyChoice.Main => "straight from the main",
        _ => "nothing",
    };
}
