namespace Floorplan.Language.Words.Terms;

/// <summary>What a hole goes through when it is in no wall.</summary>
public enum HoleThrough
{
    Floor,
    Roof,
}
