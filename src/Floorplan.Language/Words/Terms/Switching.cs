namespace Floorplan.Language.Words.Terms;

/// <summary>From how many places a switch's lamps are switched.</summary>
public enum Switching
{
    OneWay,
    TwoWay,
}
