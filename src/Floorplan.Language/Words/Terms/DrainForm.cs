namespace Floorplan.Language.Words.Terms;

/// <summary>What a drain takes water from.</summary>
public enum DrainForm
{
    Floor,
    Trench,
    Sink,
}
