namespace Floorplan.Model.Stations;

/// <summary>What a station needs, in the words of the language.</summary>
public static class NeedWords
{
    /// <summary><c>cold</c>, <c>hot</c>, <c>air</c> and so on.</summary>
    public static string Word(this NeedKind need) => need switch
    {
        NeedKind.ColdWater => "cold",
        NeedKind.HotWater => "hot",
        NeedKind.CompressedAir => "air",
        _ => need.ToString().ToLowerInvariant(),
    };
}
