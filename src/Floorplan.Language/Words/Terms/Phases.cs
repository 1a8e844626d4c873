namespace Floorplan.Language.Words.Terms;

/// <summary>The phases of an electric supply.</summary>
public enum Phases
{
    SinglePhase,
    ThreePhase,
}
