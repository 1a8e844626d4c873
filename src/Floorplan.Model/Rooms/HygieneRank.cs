namespace Floorplan.Model.Rooms;

/// <summary>How clean a class is, for one-way flow: product and people may go up freely and down never unseen.</summary>
public static class HygieneRank
{
    /// <summary>
    /// 0 outside and dirty side, 1 neutral (staff, dry), 2 clean side (clean, cold). Project's own ordering after CXC 1-1969 s.3.1.2.
    /// </summary>
    public static int Of(HygieneClass hygieneClass) => hygieneClass switch
    {
        HygieneClass.Dirty or HygieneClass.Toilet or HygieneClass.Plant => 0,
        HygieneClass.Staff or HygieneClass.Dry => 1,
        _ => 2,
    };

    /// <summary>Rank of a room, or of outside when <paramref name="room"/> is null.</summary>
    public static int Of(Room? room) => room is null ? 0 : Of(room.Class);
}
