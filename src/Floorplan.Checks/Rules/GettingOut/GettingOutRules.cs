using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class GettingOutRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new AisleTooNarrow(),
        new ExitTooFar(),
        new ExitLocksIn(),
        new OneExitOnly(),
        new ExitDoorNarrow(),
        new StepAtDoor(),
        new TrolleyCannotTurn(),
    ];
}
