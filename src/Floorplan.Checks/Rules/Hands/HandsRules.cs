using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class HandsRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new OutOfReach(),
        new ElbowRoom(),
        new NowhereToStand(),
        new HandCarryTooFar(),
        new BenchHeight(),
        new RailHeight(),
        new LiftTooHeavy(),
    ];
}
