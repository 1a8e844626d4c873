using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What keeps used water from flowing back, at a water point or a hose.</summary>
public static class GuardDetails
{
    public static Detail<TermSyntax<BackflowGuard>> VacuumBreaker { get; } =
        Guard("vacuum breaker", BackflowGuard.VacuumBreaker, "air comes in before used water is sucked back");

    public static Detail<TermSyntax<BackflowGuard>> BackflowPreventer { get; } =
        Guard("backflow preventer", BackflowGuard.BackflowPreventer, "a valve keeps used water from flowing back");

    private static Detail<TermSyntax<BackflowGuard>> Guard(string word, BackflowGuard guard, string says) =>
        new(word, says, [word], c => new TermSyntax<BackflowGuard>(guard, c.Before));
}
