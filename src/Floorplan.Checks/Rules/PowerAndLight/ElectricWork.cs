namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>What every rule says whose mend is electric work.</summary>
internal static class ElectricWork
{
    public const string Caution = "Power can kill. A licensed electrician does the work; local codes prevail.";
}
