namespace Floorplan.Model.Binding.Pages;

/// <summary>The plan that most examples stand in.</summary>
internal static class Setting
{
    public const string Shell = "plan \"Example\"\nshell shed 10200 x 4200 x 2600\n";

    /// <summary>10 000 x 4000 mm inside, two rooms that meet at 6000.</summary>
    public const string Rooms = Shell + "room wet \"Wet room\" dirty from west to 6000\nroom dry \"Dry room\" clean from 6000 to east\n";

    public const string Bench = Rooms + "station bench \"Bench\" in wet, 1200 x 600 x 900, against north wall, 300 from west\n";

    public static string Thing(string place) => $"station table \"Table\" in wet\n  size     1200 x 600 x 900\n  place    {place}";
}
