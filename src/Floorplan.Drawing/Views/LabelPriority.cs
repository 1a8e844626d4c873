namespace Floorplan.Drawing.Views;

/// <summary>Which texts get their place first.</summary>
internal static class LabelPriority
{
    /// <summary>
    /// First, because its place is looked for on all the floor of its room, and the others can stand on any side of theirs.
    /// </summary>
    public const int RoomName = 110;
    public const int Item = 100;
    public const int Finding = 95;
    public const int Opening = 90;
    public const int Service = 85;
    public const int Stream = 80;
    public const int Crossing = 78;
    public const int Ends = 60;
    public const int Level = 55;
    public const int StationName = 50;
    public const int Pipe = 40;
    public const int Need = 35;
    public const int Clear = 20;
}
